package keenward.endtoend.architecture.crooked.core.plan;

import java.sql.Connection;
import java.sql.SQLException;

/** Breaks the purity of core. */
public final class AsksADatabase {

  private AsksADatabase() {}

  static void ask(Connection connection) throws SQLException {
    connection.commit();
  }
}
