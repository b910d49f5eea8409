package pourwright.cost;

/** Names of the accounts of the journal, in plain words. */
public final class Accounts {
  /** Materials on the shelf; the material's code follows. */
  public static final String MATERIALS = "Assets:Stock:Materials:";

  /** Vessels and candles, and what is being made of them. */
  public static final String PIECES = "Assets:Stock:Pieces";

  /** Candles that are left with a shop and not yet sold. */
  public static final String WITH_SHOPS = "Assets:Stock:With shops";

  /** Everything in stock. */
  public static final String STOCK = "Assets:Stock";

  /** What customers owe; below zero it is a deposit that is owed to them. */
  public static final String CUSTOMERS = "Assets:Customers";

  /** Purse and bank. */
  public static final String MONEY = "Assets:Money";

  /** Change that was taken to a market. */
  public static final String FLOAT = "Assets:Cash float";

  /** What suppliers are owed. */
  public static final String SUPPLIERS = "Liabilities:Suppliers";

  /** Vouchers that were paid and not used. */
  public static final String VOUCHERS = "Liabilities:Vouchers";

  /** Sales; the channel follows. */
  public static final String SALES = "Income:Sales:";

  /** Money given back. */
  public static final String REFUNDS = "Income:Refunds";

  /** What was sold had cost. */
  public static final String SOLD = "Expenses:Cost of goods sold";

  /** Thrown away. */
  public static final String WASTE = "Expenses:Waste";

  /** Used up in tests. */
  public static final String TESTS = "Expenses:Tests";

  /** Given away. */
  public static final String GIFTS = "Expenses:Gifts";

  /** Not there when it was counted. */
  public static final String MISSING = "Expenses:Missing at counts";

  /** Pieces that failed and mixings of which nothing came. */
  public static final String FAILED = "Expenses:Failed pieces";

  /** What channels and markets keep. */
  public static final String FEES = "Expenses:Fees";

  /** Parcels. */
  public static final String POSTAGE = "Expenses:Postage";

  /** Rent, insurance, power. */
  public static final String FIXED = "Expenses:Fixed costs";

  /** What stood there before the period. */
  public static final String BEFORE = "Equity:Before the period";

  private Accounts() {}

  /** A word as a part of an account's name: no colon, no double space, no sign of the format. */
  public static String part(String word) {
    String plain = word.replaceAll("[^\\p{L}\\p{N}._ -]+", "-").replaceAll("\\s+", " ").strip();
    return plain.isEmpty() ? "other" : plain;
  }
}
