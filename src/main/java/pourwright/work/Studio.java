package pourwright.work;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchKind;
import pourwright.batch.Mark;
import pourwright.stock.Trace;

/**
 * All that can be done in the studio, and a way to look at its books. Pages and commands get this
 * and nothing of the store.
 */
public final class Studio {
  private final Doing doing;
  private final AttachmentFiles files;
  private volatile Runnable copying = () -> {};
  private volatile KeptResults results = KeptResults.NONE;

  /** Takes a delivery in. */
  public final ReceiveLot receiveLot;

  /** Takes a whole delivery in. */
  public final ReceiveDelivery receiveDelivery;

  /** Notes an opened pack. */
  public final OpenLot openLot;

  /** Draws a material for a batch. */
  public final DrawForBatch drawForBatch;

  /** Puts back what was not used. */
  public final ReturnToLot returnToLot;

  /** Counts a lot. */
  public final CountLot countLot;

  /** Takes out of stock for good. */
  public final WriteOff writeOff;

  /** Begins a cast. */
  public final StartBatch startCast;

  /** Begins a pour. */
  public final StartBatch startPour;

  /** Begins a pour of a candle design. */
  public final BeginPour beginPour;

  /** Counts that a pitcher was heated again. */
  public final Reheat reheat;

  /** Says where what is left in a pitcher goes. */
  public final LeftWax leftWax;

  /** Reads the wax and sets the cooling clock. */
  public final ReadWax readWax;

  /** Records a step. */
  public final RecordStep recordStep;

  /** Closes a cast. */
  public final FinishCast finishCast;

  /** Closes a pour. */
  public final FinishPour finishPour;

  /** Writes a mistake down and puts stock and plan right. */
  public final NameMistake nameMistake;

  /** Takes what was left of a pour into another. */
  public final CarryRest carryRest;

  /** Closes a pour that was stopped for safety. */
  public final StopPour stopPour;

  /** Moves pieces on. */
  public final AdvancePieces advancePieces;

  /** Tray cards. */
  public final ArrangeTrays arrangeTrays;

  /** Places a hold. */
  public final PlaceHold placeHold;

  /** Lifts a hold. */
  public final LiftHold liftHold;

  /** Timers. */
  public final RunTimers timers;

  /** Saves cards. */
  public final SaveCard saveCard;

  /** Writes readings down. */
  public final RecordReading recordReading;

  /** Keeps files. */
  public final AttachFile attachFile;

  /** Issues proof folders. */
  public final IssueFolder issueFolder;

  /** Prints labels for sale. */
  public final PrintForSale printForSale;

  /** Keeps runs of the planner. */
  public final RecordPlanRun recordPlanRun;

  /** The test shelf. */
  public final RunBurnTest burnTests;

  /** Changes settings. */
  public final SaveSetting saveSetting;

  /** Takes order files in. */
  public final AcceptOrders acceptOrders;

  /** Orders by hand. */
  public final KeepOrders orders;

  /** Customers. */
  public final KeepCustomers customers;

  /** Keeps what is typed and not kept yet. */
  public final KeepDrafts drafts;

  /** Writes money down. */
  public final RecordMoney recordMoney;

  /** Notes what came after a sale. */
  public final RecordAfterSale afterSale;

  /** Days at a market. */
  public final MarketDay market;

  /** Goods left with shops. */
  public final LeaveWithShop shops;

  /** Closes years of the books. */
  public final CloseBooks closeBooks;

  /** Clears vessels that came back for a refill. */
  public final RefillVessel refillVessel;

  /** Takes lists of cards in. */
  public final ImportCards importCards;

  /** Takes the house's cards to begin with. */
  public final TakeHouseCards houseCards;

  /** Writes down what was ordered from suppliers. */
  public final PlaceOrder placeOrder;

  /** Takes a deed back. */
  public final Undo undo;

  /**
   * @param unitOfWork the store
   * @param clock the moment, and the studio's time zone
   * @param files where attached files are kept
   */
  public Studio(UnitOfWork unitOfWork, Clock clock, AttachmentFiles files) {
    this.doing = new Doing(unitOfWork, clock);
    this.files = files;
    receiveLot = new ReceiveLot(doing);
    receiveDelivery = new ReceiveDelivery(doing);
    openLot = new OpenLot(doing);
    drawForBatch = new DrawForBatch(doing);
    returnToLot = new ReturnToLot(doing);
    countLot = new CountLot(doing);
    writeOff = new WriteOff(doing);
    startCast = new StartBatch(doing, BatchKind.CAST);
    startPour = new StartBatch(doing, BatchKind.POUR);
    beginPour = new BeginPour(doing, startPour);
    leftWax = new LeftWax(doing);
    readWax = new ReadWax(doing);
    recordStep = new RecordStep(doing);
    reheat = new Reheat(doing, recordStep);
    finishCast = new FinishCast(doing);
    finishPour = new FinishPour(doing);
    nameMistake = new NameMistake(doing);
    carryRest = new CarryRest(doing);
    stopPour = new StopPour(doing);
    advancePieces = new AdvancePieces(doing);
    arrangeTrays = new ArrangeTrays(doing);
    placeHold = new PlaceHold(doing);
    liftHold = new LiftHold(doing);
    timers = new RunTimers(doing);
    saveCard = new SaveCard(doing);
    recordReading = new RecordReading(doing);
    attachFile = new AttachFile(doing, files);
    issueFolder = new IssueFolder(doing, files);
    recordPlanRun = new RecordPlanRun(doing);
    burnTests = new RunBurnTest(doing);
    saveSetting = new SaveSetting(doing);
    acceptOrders = new AcceptOrders(doing);
    orders = new KeepOrders(doing);
    customers = new KeepCustomers(doing);
    drafts = new KeepDrafts(doing);
    recordMoney = new RecordMoney(doing);
    afterSale = new RecordAfterSale(doing);
    market = new MarketDay(doing);
    shops = new LeaveWithShop(doing);
    closeBooks = new CloseBooks(doing);
    refillVessel = new RefillVessel(doing);
    importCards = new ImportCards(doing);
    houseCards = new TakeHouseCards(doing);
    printForSale = new PrintForSale(doing);
    placeOrder = new PlaceOrder(doing);
    undo = new Undo(doing);
  }

  /** Looks at one moment of the books; everything read inside belongs together. */
  public <T> T look(Function<Books, T> reading) {
    return doing.look(reading);
  }

  /** The moment. */
  public Instant now() {
    return doing.now();
  }

  /** The studio's day. */
  public LocalDate today() {
    return doing.today();
  }

  /** Says how a copy of the books is made; without it none is. */
  public void copyingBy(Runnable copying) {
    this.copying = copying;
  }

  /** Makes a copy of the books before much is taken in; throws when the disk does not take it. */
  public void copyFirst() {
    copying.run();
  }

  /** Attached files. */
  public AttachmentFiles files() {
    return files;
  }

  /** Says where computed results are kept; without it they are computed again. */
  public void keepResultsIn(KeptResults place) {
    this.results = place;
  }

  /** Computed results. */
  public KeptResults results() {
    return results;
  }

  /** The history, newest first. */
  public PageOf<Deed> history(@Nullable String after, int limit) {
    return look(books -> books.deeds().history(after, limit));
  }

  /** What carries a mark, as a person typed it or a code gave it. */
  public Optional<Subject> find(Mark mark) {
    return look(books -> books.pieces().marked(mark));
  }

  /** What something went into, all the way to candles and orders. */
  public Trace.Reached traceOnward(Trace.Node from) {
    return look(books -> Trace.walk(from, books.trace()::onward, true));
  }

  /** What something is made of, all the way to the lots. */
  public Trace.Reached traceBack(Trace.Node from) {
    return look(books -> Trace.walk(from, books.trace()::back, false));
  }

  /** Holds that stop a piece now; empty when it may be picked, labelled and promised. */
  public List<Hold> stopping(long piece) {
    return look(books -> books.holds().stopping(piece));
  }
}
