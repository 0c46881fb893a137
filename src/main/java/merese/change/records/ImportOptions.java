package merese.change.records;

import java.util.Set;

/**
 * What a user has said to an import.
 *
 * @param replace whether what a record says otherwise replaces what the library says
 * @param join keys of records that are to be editions of the work proposed for each
 * @param joinAll the same for all
 */
public record ImportOptions(boolean replace, Set<String> join, boolean joinAll) {
  public static final ImportOptions NONE = new ImportOptions(false, Set.of(), false);

  public ImportOptions {
    join = Set.copyOf(join);
  }

  boolean joins(String key) {
    return joinAll || join.contains(key);
  }
}
