/** SQLite and PostgreSQL, migrations, backup: the only importer of SQL libraries. */
@NullMarked
package pourwright.store;

import org.jspecify.annotations.NullMarked;
