package pourwright.store;

import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.AccountBook;
import pourwright.work.AfterSaleBook;
import pourwright.work.AttachmentBook;
import pourwright.work.BatchBook;
import pourwright.work.Books;
import pourwright.work.BurnBook;
import pourwright.work.CustomerBook;
import pourwright.work.DeedBook;
import pourwright.work.DraftBook;
import pourwright.work.DrawerBook;
import pourwright.work.HoldBook;
import pourwright.work.LotBook;
import pourwright.work.MoneyBook;
import pourwright.work.OrderBook;
import pourwright.work.PieceBook;
import pourwright.work.PlanRunBook;
import pourwright.work.ReadingBook;
import pourwright.work.RecallBook;
import pourwright.work.SettingBook;
import pourwright.work.TimerBook;
import pourwright.work.TraceBook;

/** All books on one connection, inside one transaction. */
final class SqlBooks implements Books {
  private final Handle handle;
  private final DrawerSql cards;
  private final BurnSql burns;

  /**
   * @param recall what was worked out of committed facts; null in a transaction that writes
   */
  SqlBooks(Handle handle, @Nullable Recall recall) {
    this.handle = handle;
    this.cards = new DrawerSql(handle, recall);
    this.burns = new BurnSql(handle, recall);
  }

  @Override
  public DeedBook deeds() {
    return new DeedSql(handle);
  }

  @Override
  public DrawerBook cards() {
    return cards;
  }

  @Override
  public LotBook lots() {
    return new LotSql(handle);
  }

  @Override
  public BatchBook batches() {
    return new BatchSql(handle);
  }

  @Override
  public PieceBook pieces() {
    return new PieceSql(handle);
  }

  @Override
  public TimerBook timers() {
    return new DeskSql.Timers(handle);
  }

  @Override
  public ReadingBook readings() {
    return new DeskSql.Readings(handle);
  }

  @Override
  public AttachmentBook attachments() {
    return new AttachmentSql(handle);
  }

  @Override
  public HoldBook holds() {
    return new HoldSql(handle);
  }

  @Override
  public BurnBook burns() {
    return burns;
  }

  @Override
  public SettingBook settings() {
    return new SettingSql(handle);
  }

  @Override
  public PlanRunBook planRuns() {
    return new PlanRunSql(handle);
  }

  @Override
  public OrderBook orders() {
    return new OrderSql(handle);
  }

  @Override
  public CustomerBook customers() {
    return new CustomerSql(handle);
  }

  @Override
  public DraftBook drafts() {
    return new DraftSql(handle);
  }

  @Override
  public MoneyBook money() {
    return new MoneySql(handle);
  }

  @Override
  public AfterSaleBook afterSales() {
    return new AfterSaleSql(handle);
  }

  @Override
  public RecallBook recalls() {
    return new RecallSql(handle);
  }

  @Override
  public AccountBook accounts() {
    return new AccountSql(handle);
  }

  @Override
  public TraceBook trace() {
    return new TraceSql(handle);
  }
}
