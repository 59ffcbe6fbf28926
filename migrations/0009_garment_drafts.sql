CREATE TABLE `garment_draft` (
	`id` text PRIMARY KEY NOT NULL,
	`garment_id` text NOT NULL,
	`number` integer NOT NULL,
	`measurement_set_id` text NOT NULL,
	`body` text NOT NULL,
	`asked` text NOT NULL,
	`estimate` text NOT NULL,
	`fitting_id` text,
	`created_at` text NOT NULL,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`measurement_set_id`) REFERENCES `measurement_set`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`fitting_id`) REFERENCES `fitting`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `garment_draft_number` ON `garment_draft` (`garment_id`,`number`);