CREATE TABLE `garment_actual` (
	`garment_id` text PRIMARY KEY NOT NULL,
	`cloth` real,
	`hand_thread` real,
	`machine_thread` real,
	`revision` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE TABLE `time_entry` (
	`id` text PRIMARY KEY NOT NULL,
	`commission_id` text NOT NULL,
	`day` text NOT NULL,
	`minutes` real NOT NULL,
	`note` text NOT NULL,
	`aside_at` text,
	`removed_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `time_entry_commission` ON `time_entry` (`commission_id`);--> statement-breakpoint
CREATE TABLE `time_entry_step` (
	`time_entry_id` text NOT NULL,
	`step_id` text NOT NULL,
	PRIMARY KEY(`time_entry_id`, `step_id`),
	FOREIGN KEY (`time_entry_id`) REFERENCES `time_entry`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`step_id`) REFERENCES `step`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `time_entry_step_step` ON `time_entry_step` (`step_id`);--> statement-breakpoint
ALTER TABLE `cloth` ADD `charged` text DEFAULT 'bought' NOT NULL;--> statement-breakpoint
ALTER TABLE `commission` ADD `delivered_day` text;--> statement-breakpoint
ALTER TABLE `garment` ADD `option` integer;--> statement-breakpoint
ALTER TABLE `step` ADD `work` text DEFAULT '{}' NOT NULL;