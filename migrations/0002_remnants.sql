CREATE TABLE `remnant` (
	`id` text PRIMARY KEY NOT NULL,
	`cloth_id` text,
	`cloth_name` text NOT NULL,
	`garment_id` text NOT NULL,
	`offcut` integer NOT NULL,
	`width` real NOT NULL,
	`length` real NOT NULL,
	`used_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`cloth_id`) REFERENCES `cloth`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `remnant_offcut` ON `remnant` (`garment_id`,`offcut`);