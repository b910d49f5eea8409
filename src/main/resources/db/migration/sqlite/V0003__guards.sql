-- The database itself refuses an edit: ledger tables only grow.

CREATE TRIGGER deed_no_update BEFORE UPDATE ON deed
BEGIN SELECT RAISE(ABORT, 'deed only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER deed_no_delete BEFORE DELETE ON deed
BEGIN SELECT RAISE(ABORT, 'deed only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER card_no_update BEFORE UPDATE ON card
BEGIN SELECT RAISE(ABORT, 'card only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER card_no_delete BEFORE DELETE ON card
BEGIN SELECT RAISE(ABORT, 'card only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER mark_no_update BEFORE UPDATE ON mark
BEGIN SELECT RAISE(ABORT, 'mark only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER mark_no_delete BEFORE DELETE ON mark
BEGIN SELECT RAISE(ABORT, 'mark only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER lot_no_update BEFORE UPDATE ON lot
BEGIN SELECT RAISE(ABORT, 'lot only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER lot_no_delete BEFORE DELETE ON lot
BEGIN SELECT RAISE(ABORT, 'lot only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER lot_opening_no_update BEFORE UPDATE ON lot_opening
BEGIN SELECT RAISE(ABORT, 'lot_opening only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER lot_opening_no_delete BEFORE DELETE ON lot_opening
BEGIN SELECT RAISE(ABORT, 'lot_opening only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_no_update BEFORE UPDATE ON batch
BEGIN SELECT RAISE(ABORT, 'batch only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_no_delete BEFORE DELETE ON batch
BEGIN SELECT RAISE(ABORT, 'batch only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_finish_no_update BEFORE UPDATE ON batch_finish
BEGIN SELECT RAISE(ABORT, 'batch_finish only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_finish_no_delete BEFORE DELETE ON batch_finish
BEGIN SELECT RAISE(ABORT, 'batch_finish only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_step_no_update BEFORE UPDATE ON batch_step
BEGIN SELECT RAISE(ABORT, 'batch_step only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_step_no_delete BEFORE DELETE ON batch_step
BEGIN SELECT RAISE(ABORT, 'batch_step only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_step_amount_no_update BEFORE UPDATE ON batch_step_amount
BEGIN SELECT RAISE(ABORT, 'batch_step_amount only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER batch_step_amount_no_delete BEFORE DELETE ON batch_step_amount
BEGIN SELECT RAISE(ABORT, 'batch_step_amount only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER movement_no_update BEFORE UPDATE ON movement
BEGIN SELECT RAISE(ABORT, 'movement only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER movement_no_delete BEFORE DELETE ON movement
BEGIN SELECT RAISE(ABORT, 'movement only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER piece_no_update BEFORE UPDATE ON piece
BEGIN SELECT RAISE(ABORT, 'piece only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER piece_no_delete BEFORE DELETE ON piece
BEGIN SELECT RAISE(ABORT, 'piece only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_line_no_update BEFORE UPDATE ON order_line
BEGIN SELECT RAISE(ABORT, 'order_line only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_line_no_delete BEFORE DELETE ON order_line
BEGIN SELECT RAISE(ABORT, 'order_line only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER piece_event_no_update BEFORE UPDATE ON piece_event
BEGIN SELECT RAISE(ABORT, 'piece_event only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER piece_event_no_delete BEFORE DELETE ON piece_event
BEGIN SELECT RAISE(ABORT, 'piece_event only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER tray_no_update BEFORE UPDATE ON tray
BEGIN SELECT RAISE(ABORT, 'tray only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER tray_no_delete BEFORE DELETE ON tray
BEGIN SELECT RAISE(ABORT, 'tray only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER tray_piece_no_update BEFORE UPDATE ON tray_piece
BEGIN SELECT RAISE(ABORT, 'tray_piece only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER tray_piece_no_delete BEFORE DELETE ON tray_piece
BEGIN SELECT RAISE(ABORT, 'tray_piece only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER tray_mixed_no_update BEFORE UPDATE ON tray_mixed
BEGIN SELECT RAISE(ABORT, 'tray_mixed only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER tray_mixed_no_delete BEFORE DELETE ON tray_mixed
BEGIN SELECT RAISE(ABORT, 'tray_mixed only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER timer_no_update BEFORE UPDATE ON timer
BEGIN SELECT RAISE(ABORT, 'timer only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER timer_no_delete BEFORE DELETE ON timer
BEGIN SELECT RAISE(ABORT, 'timer only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER timer_answer_no_update BEFORE UPDATE ON timer_answer
BEGIN SELECT RAISE(ABORT, 'timer_answer only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER timer_answer_no_delete BEFORE DELETE ON timer_answer
BEGIN SELECT RAISE(ABORT, 'timer_answer only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER reading_no_update BEFORE UPDATE ON reading
BEGIN SELECT RAISE(ABORT, 'reading only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER reading_no_delete BEFORE DELETE ON reading
BEGIN SELECT RAISE(ABORT, 'reading only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER attachment_no_update BEFORE UPDATE ON attachment
BEGIN SELECT RAISE(ABORT, 'attachment only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER attachment_no_delete BEFORE DELETE ON attachment
BEGIN SELECT RAISE(ABORT, 'attachment only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER hold_no_update BEFORE UPDATE ON hold
BEGIN SELECT RAISE(ABORT, 'hold only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER hold_no_delete BEFORE DELETE ON hold
BEGIN SELECT RAISE(ABORT, 'hold only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER hold_lift_no_update BEFORE UPDATE ON hold_lift
BEGIN SELECT RAISE(ABORT, 'hold_lift only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER hold_lift_no_delete BEFORE DELETE ON hold_lift
BEGIN SELECT RAISE(ABORT, 'hold_lift only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_test_no_update BEFORE UPDATE ON burn_test
BEGIN SELECT RAISE(ABORT, 'burn_test only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_test_no_delete BEFORE DELETE ON burn_test
BEGIN SELECT RAISE(ABORT, 'burn_test only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_test_close_no_update BEFORE UPDATE ON burn_test_close
BEGIN SELECT RAISE(ABORT, 'burn_test_close only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_test_close_no_delete BEFORE DELETE ON burn_test_close
BEGIN SELECT RAISE(ABORT, 'burn_test_close only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_sample_no_update BEFORE UPDATE ON burn_sample
BEGIN SELECT RAISE(ABORT, 'burn_sample only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_sample_no_delete BEFORE DELETE ON burn_sample
BEGIN SELECT RAISE(ABORT, 'burn_sample only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_cycle_no_update BEFORE UPDATE ON burn_cycle
BEGIN SELECT RAISE(ABORT, 'burn_cycle only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_cycle_no_delete BEFORE DELETE ON burn_cycle
BEGIN SELECT RAISE(ABORT, 'burn_cycle only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_cycle_end_no_update BEFORE UPDATE ON burn_cycle_end
BEGIN SELECT RAISE(ABORT, 'burn_cycle_end only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_cycle_end_no_delete BEFORE DELETE ON burn_cycle_end
BEGIN SELECT RAISE(ABORT, 'burn_cycle_end only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_look_no_update BEFORE UPDATE ON burn_look
BEGIN SELECT RAISE(ABORT, 'burn_look only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER burn_look_no_delete BEFORE DELETE ON burn_look
BEGIN SELECT RAISE(ABORT, 'burn_look only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER candle_proof_no_update BEFORE UPDATE ON candle_proof
BEGIN SELECT RAISE(ABORT, 'candle_proof only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER candle_proof_no_delete BEFORE DELETE ON candle_proof
BEGIN SELECT RAISE(ABORT, 'candle_proof only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER setting_no_update BEFORE UPDATE ON setting
BEGIN SELECT RAISE(ABORT, 'setting only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER setting_no_delete BEFORE DELETE ON setting
BEGIN SELECT RAISE(ABORT, 'setting only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER plan_run_no_update BEFORE UPDATE ON plan_run
BEGIN SELECT RAISE(ABORT, 'plan_run only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER plan_run_no_delete BEFORE DELETE ON plan_run
BEGIN SELECT RAISE(ABORT, 'plan_run only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_terms_no_update BEFORE UPDATE ON order_terms
BEGIN SELECT RAISE(ABORT, 'order_terms only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_terms_no_delete BEFORE DELETE ON order_terms
BEGIN SELECT RAISE(ABORT, 'order_terms only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_fact_no_update BEFORE UPDATE ON order_fact
BEGIN SELECT RAISE(ABORT, 'order_fact only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_fact_no_delete BEFORE DELETE ON order_fact
BEGIN SELECT RAISE(ABORT, 'order_fact only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_file_no_update BEFORE UPDATE ON order_file
BEGIN SELECT RAISE(ABORT, 'order_file only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER order_file_no_delete BEFORE DELETE ON order_file
BEGIN SELECT RAISE(ABORT, 'order_file only grows: a mistake is corrected by a new deed'); END;

-- What is left of a lot, kept beside the movements; the CHECK on it refuses a draw below zero.
CREATE TRIGGER movement_balance AFTER INSERT ON movement
BEGIN
  INSERT INTO lot_balance (lot_id, units) VALUES (NEW.lot_id, 0) ON CONFLICT (lot_id) DO NOTHING;
  UPDATE lot_balance SET units = units + NEW.units WHERE lot_id = NEW.lot_id;
END;

-- 'PWrt' and the newest step of the migrations: how a newer or a foreign file is told apart.
PRAGMA application_id = 1347908212;
PRAGMA user_version = 3;
