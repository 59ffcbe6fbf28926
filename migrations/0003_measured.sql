CREATE TABLE `retired_set` (
	`measurement_set_id` text PRIMARY KEY NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`measurement_set_id`) REFERENCES `measurement_set`(`id`) ON UPDATE no action ON DELETE cascade
) STRICT;
--> statement-breakpoint
ALTER TABLE `measurement_set` ADD `proportions_of` text;--> statement-breakpoint
ALTER TABLE `measurement_set` ADD `notes` text DEFAULT '{}' NOT NULL;--> statement-breakpoint
ALTER TABLE `measurement_set` ADD `remarks` text DEFAULT '{}' NOT NULL;