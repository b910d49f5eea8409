package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.material.Material;
import pourwright.material.MaterialBook;

/** The drawers that the house has, and the whole of them as the craft's own book. */
public final class Drawers {
  private Drawers() {}

  /** Materials: the maker's own, over the typical ones that come with the program. */
  public static final Drawer<Material> MATERIAL = new Drawer<>("material", Material.class);

  /** Silicone molds. */
  public static final Drawer<pourwright.card.Mold> MOLD =
      new Drawer<>("mold", pourwright.card.Mold.class);

  /** Vessels. */
  public static final Drawer<pourwright.card.Vessel> VESSEL =
      new Drawer<>("vessel", pourwright.card.Vessel.class);

  /** Mix cards. */
  public static final Drawer<pourwright.card.MixCard> MIX =
      new Drawer<>("mix", pourwright.card.MixCard.class);

  /** Finishes. */
  public static final Drawer<pourwright.card.Finish> FINISH =
      new Drawer<>("finish", pourwright.card.Finish.class);

  /** Pour cards. */
  public static final Drawer<pourwright.card.PourCard> POUR =
      new Drawer<>("pour", pourwright.card.PourCard.class);

  /** Candles. */
  public static final Drawer<pourwright.card.CandleDesign> CANDLE =
      new Drawer<>("candle", pourwright.card.CandleDesign.class);

  /** Scales and thermometers. */
  public static final Drawer<pourwright.card.Instrument> INSTRUMENT =
      new Drawer<>("instrument", pourwright.card.Instrument.class);

  /** Who works here. */
  public static final Drawer<pourwright.card.Person> PERSON =
      new Drawer<>("person", pourwright.card.Person.class);

  /** Where materials come from. */
  public static final Drawer<pourwright.card.Supplier> SUPPLIER =
      new Drawer<>("supplier", pourwright.card.Supplier.class);

  /** What safety data sheets say of a material's composition, by the material's code. */
  public static final Drawer<pourwright.hazard.HazardSheet> SHEET =
      new Drawer<>("sheet", pourwright.hazard.HazardSheet.class);

  /** Proof folders as they were issued, by the candle's code. */
  public static final Drawer<IssuedFolder> FOLDER = new Drawer<>("folder", IssuedFolder.class);

  /** All drawers of cards, materials not among them. */
  public static List<Drawer<? extends Card>> ofCards() {
    return List.of(MOLD, VESSEL, MIX, FINISH, POUR, CANDLE, INSTRUMENT, PERSON, SUPPLIER);
  }

  private static final DrawerBook.Worked<MaterialBook> MATERIALS =
      new DrawerBook.Worked<>("materials", Drawers::materials);

  private static final DrawerBook.Worked<CardBook> BOOK =
      new DrawerBook.Worked<>("book", Drawers::book);

  /** The typical materials with the maker's own over them. */
  public static MaterialBook materials(Books books) {
    return books.cards().workedOut(MATERIALS);
  }

  private static MaterialBook materials(DrawerBook cards) {
    return MaterialBook.typical()
        .with(cards.all(MATERIAL).stream().map(CardVersion::body).toList());
  }

  /** One material: the maker's own, else the typical one. */
  public static java.util.Optional<Material> material(Books books, String code) {
    return books
        .cards()
        .current(MATERIAL, code)
        .filter(version -> !version.retired())
        .map(CardVersion::body)
        .or(() -> Typical.BOOK.find(code));
  }

  /** The typical materials, read once. */
  private static final class Typical {
    static final MaterialBook BOOK = MaterialBook.typical();
  }

  /** Every card that counts now, as the craft's own book. */
  public static CardBook book(Books books) {
    return books.cards().workedOut(BOOK);
  }

  private static CardBook book(DrawerBook drawers) {
    List<Card> cards = new ArrayList<>();
    for (Drawer<? extends Card> drawer : ofCards()) {
      drawers.all(drawer).forEach(version -> cards.add(version.body()));
    }
    return CardBook.of(drawers.workedOut(MATERIALS), cards);
  }
}
