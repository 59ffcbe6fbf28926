CREATE TABLE `own_construction` (
	`id` text PRIMARY KEY NOT NULL,
	`family` text NOT NULL,
	`version` integer NOT NULL,
	`name` text NOT NULL,
	`definition` text NOT NULL,
	`created_at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `own_construction_version` ON `own_construction` (`family`,`version`);--> statement-breakpoint
CREATE TRIGGER `own_construction_kept` BEFORE UPDATE ON `own_construction` BEGIN SELECT RAISE(ABORT, 'frozen: own_construction'); END;--> statement-breakpoint
CREATE TRIGGER `own_construction_not_deleted` BEFORE DELETE ON `own_construction` BEGIN SELECT RAISE(ABORT, 'frozen: own_construction'); END;
