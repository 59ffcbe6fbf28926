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
-- History is never altered, save that of a person the workroom was asked to forget.
DROP TRIGGER `change_not_deleted`;--> statement-breakpoint
CREATE TRIGGER `change_not_deleted` BEFORE DELETE ON `change`
WHEN NOT EXISTS (SELECT 1 FROM `forgotten` WHERE `entity_id` = OLD.`entity_id`)
BEGIN SELECT RAISE(ABORT, 'frozen: change'); END;
