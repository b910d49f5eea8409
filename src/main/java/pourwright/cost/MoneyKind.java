package pourwright.cost;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/** What money moved for, with the two accounts it moves between. */
public enum MoneyKind {
  /** The price of one piece that was agreed for an order line; nothing moves yet. */
  AGREED("agreed price of one piece", null, null),
  /** Paid by a customer. */
  PAID("paid by a customer", Accounts.MONEY, Accounts.CUSTOMERS),
  /** Paid by a customer before anything left. */
  DEPOSIT("deposit", Accounts.MONEY, Accounts.CUSTOMERS),
  /** Given back to a customer. */
  REFUND("refund", Accounts.REFUNDS, Accounts.MONEY),
  /** A voucher was paid. */
  VOUCHER_SOLD("voucher sold", Accounts.MONEY, Accounts.VOUCHERS),
  /** A customer paid with a voucher. */
  VOUCHER_USED("voucher used", Accounts.VOUCHERS, Accounts.CUSTOMERS),
  /** What a channel or a market keeps. */
  FEE("fee", Accounts.FEES, Accounts.MONEY),
  /** What a shop keeps of the sales of goods that were left with it. */
  COMMISSION("commission kept by the shop", Accounts.FEES, Accounts.CUSTOMERS),
  /** Sending a parcel. */
  POSTAGE("postage", Accounts.POSTAGE, Accounts.MONEY),
  /** Rent, insurance, power. */
  FIXED("fixed cost", Accounts.FIXED, Accounts.MONEY),
  /** A supplier was paid. */
  SUPPLIER("paid to a supplier", Accounts.SUPPLIERS, Accounts.MONEY),
  /** Change was taken to a market. */
  FLOAT_OUT("cash float taken", Accounts.FLOAT, Accounts.MONEY),
  /** Change came home. */
  FLOAT_HOME("cash float brought home", Accounts.MONEY, Accounts.FLOAT);

  private final String words;
  private final @Nullable String debit;
  private final @Nullable String credit;

  MoneyKind(String words, @Nullable String debit, @Nullable String credit) {
    this.words = words;
    this.debit = debit;
    this.credit = credit;
  }

  /** The words a person reads. */
  public String words() {
    return words;
  }

  /** The account that grows, null where nothing moves. */
  public @Nullable String debit() {
    return debit;
  }

  /** The account it comes from, null where nothing moves. */
  public @Nullable String credit() {
    return credit;
  }

  /** The short name in files and forms. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Reads a code.
   *
   * @throws OutOfRange when it is none
   */
  public static MoneyKind of(String code) {
    for (MoneyKind kind : values()) {
      if (kind.code().equals(code.strip().toLowerCase(Locale.ROOT))) {
        return kind;
      }
    }
    throw new OutOfRange("kind", "'" + code + "' is no kind of money", "choose one of the list");
  }
}
