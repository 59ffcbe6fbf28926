CREATE TABLE `forgotten` (
	`entity_id` text PRIMARY KEY NOT NULL,
	`at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `sheet` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`client_id` text,
	`name` text NOT NULL,
	`hash` text NOT NULL,
	`bytes` integer NOT NULL,
	`pages` integer NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE TRIGGER `sheet_kept` BEFORE UPDATE ON `sheet` BEGIN SELECT RAISE(ABORT, 'frozen: sheet'); END;--> statement-breakpoint
-- What is frozen is never altered, save that of a person the workroom was asked to forget: then her history goes,
-- and her body out of what must be kept.
DROP TRIGGER `change_not_deleted`;--> statement-breakpoint
CREATE TRIGGER `change_not_deleted` BEFORE DELETE ON `change`
WHEN NOT EXISTS (SELECT 1 FROM `forgotten` WHERE `entity_id` = OLD.`entity_id`)
BEGIN SELECT RAISE(ABORT, 'frozen: change'); END;--> statement-breakpoint
DROP TRIGGER `measurement_set_kept`;--> statement-breakpoint
CREATE TRIGGER `measurement_set_kept` BEFORE UPDATE ON `measurement_set`
WHEN OLD.`used_at` IS NOT NULL AND NOT EXISTS (SELECT 1 FROM `forgotten` WHERE `entity_id` = OLD.`id`)
BEGIN SELECT RAISE(ABORT, 'frozen: measurement_set'); END;--> statement-breakpoint
DROP TRIGGER `quote_kept`;--> statement-breakpoint
CREATE TRIGGER `quote_kept` BEFORE UPDATE ON `quote`
WHEN NOT EXISTS (SELECT 1 FROM `forgotten` WHERE `entity_id` = OLD.`id`)
BEGIN SELECT RAISE(ABORT, 'frozen: quote'); END;--> statement-breakpoint
DROP TRIGGER `document_not_deleted`;--> statement-breakpoint
CREATE TRIGGER `document_not_deleted` BEFORE DELETE ON `document`
WHEN NOT EXISTS (SELECT 1 FROM `forgotten` WHERE `entity_id` = OLD.`id`)
BEGIN SELECT RAISE(ABORT, 'frozen: document'); END;
