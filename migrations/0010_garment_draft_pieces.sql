ALTER TABLE `garment_draft` ADD `recut` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
-- A draft that a garment was made from is never altered, save to forget whose body it was.
CREATE TRIGGER `garment_draft_kept` BEFORE UPDATE ON `garment_draft`
WHEN NOT EXISTS (SELECT 1 FROM `forgotten` WHERE `entity_id` = OLD.`id`)
BEGIN SELECT RAISE(ABORT, 'frozen: garment_draft'); END;--> statement-breakpoint
CREATE TRIGGER `garment_draft_not_deleted` BEFORE DELETE ON `garment_draft` BEGIN SELECT RAISE(ABORT, 'frozen: garment_draft'); END;
