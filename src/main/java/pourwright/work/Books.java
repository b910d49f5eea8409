package pourwright.work;

/** All books of the studio as one transaction sees them. */
public interface Books {
  /** The history. */
  DeedBook deeds();

  /** Cards. */
  DrawerBook cards();

  /** Lots and movements. */
  LotBook lots();

  /** Casts and pours. */
  BatchBook batches();

  /** Pieces and tray cards. */
  PieceBook pieces();

  /** Timers. */
  TimerBook timers();

  /** Readings. */
  ReadingBook readings();

  /** Attachments. */
  AttachmentBook attachments();

  /** Holds. */
  HoldBook holds();

  /** Burn tests. */
  BurnBook burns();

  /** Settings. */
  SettingBook settings();

  /** Runs of the planner. */
  PlanRunBook planRuns();

  /** Orders. */
  OrderBook orders();

  /** Customers. */
  CustomerBook customers();

  /** What is typed and not kept yet. */
  DraftBook drafts();

  /** Money. */
  MoneyBook money();

  /** What came after sales. */
  AfterSaleBook afterSales();

  /** Where pieces are. */
  RecallBook recalls();

  /** The years at once. */
  AccountBook accounts();

  /** The trace. */
  TraceBook trace();
}
