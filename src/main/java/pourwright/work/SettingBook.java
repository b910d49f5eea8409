package pourwright.work;

import java.util.Map;
import java.util.Optional;

/** The studio's settings: text by key, every change kept. */
public interface SettingBook {

  /** The value that counts now. */
  Optional<String> value(String key);

  /** All values that count now. */
  Map<String, String> all();

  /** Writes a value. Only inside a write. */
  void put(String key, String value, long deed);
}
