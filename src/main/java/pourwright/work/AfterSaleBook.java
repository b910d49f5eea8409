package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The register of what came after sales. */
public interface AfterSaleBook {

  /** An entry by number. */
  Optional<AfterSale> entry(long id);

  /** Entries newest first. */
  PageOf<AfterSale> list(@Nullable String after, int limit);

  /** What a deed wrote. */
  List<AfterSale> ofDeed(long deed);

  /** Writes one and gives it back with its number. Only inside a write. */
  AfterSale append(AfterSale entry, Deed deed);
}
