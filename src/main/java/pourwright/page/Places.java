package pourwright.page;

import java.util.List;
import pourwright.page.board.BoardPlace;
import pourwright.page.casting.CastingPlace;
import pourwright.page.house.AfterCorner;
import pourwright.page.house.CrewCorner;
import pourwright.page.house.FileCorner;
import pourwright.page.house.FindCorner;
import pourwright.page.house.HistoryCorner;
import pourwright.page.house.HoldCorner;
import pourwright.page.house.MistakeCorner;
import pourwright.page.house.RefillCorner;
import pourwright.page.house.SaleSettingsCorner;
import pourwright.page.house.SettingsCorner;
import pourwright.page.house.SheetCorner;
import pourwright.page.house.StopCorner;
import pourwright.page.house.TimerCorner;
import pourwright.page.house.WelcomeCorner;
import pourwright.page.now.NowPlace;
import pourwright.page.now.WorkAhead;
import pourwright.page.orders.OrdersPlace;
import pourwright.page.pouring.PouringPlace;
import pourwright.page.press.PressPlace;
import pourwright.page.shelf.ShelfPlace;
import pourwright.page.slate.SlatePlace;
import pourwright.page.stockroom.StockroomPlace;
import pourwright.work.PaperPrinter;

/** The nine places, in the order of the navigation. */
public final class Places {
  private Places() {}

  /** All nine, at this desk. */
  public static List<Place> all(Desk desk) {
    return all(desk, new WorkAhead(desk));
  }

  /** All nine, the first page telling this plan of the work. */
  static List<Place> all(Desk desk, WorkAhead ahead) {
    return List.of(
        new NowPlace(desk, ahead),
        new OrdersPlace(desk),
        new BoardPlace(desk),
        new CastingPlace(desk),
        new PouringPlace(desk),
        new ShelfPlace(desk),
        new StockroomPlace(desk),
        new SlatePlace(desk),
        new PressPlace(desk));
  }

  /** What belongs to the whole house. */
  public static List<Corner> corners(Desk desk) {
    return List.of(
        new TimerCorner(desk),
        new HistoryCorner(desk),
        new HoldCorner(desk),
        new AfterCorner(desk),
        new RefillCorner(desk),
        new StopCorner(desk),
        new MistakeCorner(desk),
        new SheetCorner(desk, PaperPrinter.ofTheHouse()),
        new FindCorner(desk),
        new SettingsCorner(desk),
        new SaleSettingsCorner(desk),
        new CrewCorner(desk),
        new DraftCorner(desk),
        new FileCorner(desk),
        new WelcomeCorner(desk));
  }
}
