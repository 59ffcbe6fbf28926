ALTER TABLE `remnant` ADD `place` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `remnant` ADD `washed` integer DEFAULT true NOT NULL;--> statement-breakpoint
ALTER TABLE `remnant` ADD `stock_id` text REFERENCES stock_length(id);