package pourwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import pourwright.page.house.SettingsCorner;
import pourwright.page.now.WorkAhead;

/**
 * What the server shows: the places, and what stands around every page.
 *
 * @param desk clock, zone, locale
 * @param places the nine, in the order of the navigation
 * @param corners what belongs to no single place
 * @param surroundings timers, STOP, undo
 * @param startOwn begins a studio of her own, where this is the sample studio; else null
 * @param ready an empty string when everything the pages need is in order, else what is not
 */
public record Site(
    Desk desk,
    List<Place> places,
    List<Corner> corners,
    Surroundings surroundings,
    @Nullable Runnable startOwn,
    Supplier<String> ready) {
  /** The site of an open studio, with everything that can be done there. */
  public static Site of(Desk desk, Supplier<String> ready) {
    return of(desk, new WorkAhead(desk), ready);
  }

  /** As above, with a plan of the work that other corners tell as well. */
  public static Site of(Desk desk, WorkAhead ahead, Supplier<String> ready) {
    return new Site(
        desk,
        Places.all(desk, ahead),
        Places.corners(desk),
        new StudioSurroundings(desk),
        null,
        ready);
  }

  /** The same site with one more corner. */
  public Site and(Corner corner) {
    List<Corner> more = new ArrayList<>(corners);
    more.add(corner);
    return new Site(desk, places, List.copyOf(more), surroundings, startOwn, ready);
  }

  /** The same site, whose settings page says how it stands with the backups. */
  public Site keeping(Supplier<List<String>> backups) {
    List<Corner> told =
        corners.stream()
            .map(c -> c instanceof SettingsCorner ? new SettingsCorner(desk, backups) : c)
            .toList();
    return new Site(desk, places, told, surroundings, startOwn, ready);
  }

  /** The same site as the sample studio, which offers to begin one of her own. */
  public Site offering(@Nullable Runnable start) {
    return new Site(desk, places, corners, surroundings, start, ready);
  }
}
