package merese.change.vocabulary;

import java.util.Collection;
import merese.store.ChangeSet;
import merese.store.Stored;
import merese.store.VocabularyFile;

/** Where the files of a change go: into a {@link ChangeSet}, or, to show it only, nowhere. */
interface Sink {
  /**
   * @param from the files that parts of the value may come from
   */
  <T> void save(Stored<T> old, T value, Collection<Stored<T>> from);

  void add(VocabularyFile file);

  /** How many files would be written. */
  int files();

  static Sink into(ChangeSet change) {
    return new Sink() {
      @Override
      public <T> void save(Stored<T> old, T value, Collection<Stored<T>> from) {
        change.save(old, value, from);
      }

      @Override
      public void add(VocabularyFile file) {
        change.add(file);
      }

      @Override
      public int files() {
        return change.files();
      }
    };
  }

  /** One that only counts. */
  static Sink counting() {
    return new Sink() {
      private int files;

      @Override
      public <T> void save(Stored<T> old, T value, Collection<Stored<T>> from) {
        files += old.value().equals(value) ? 0 : 1;
      }

      @Override
      public void add(VocabularyFile file) {
        files++;
      }

      @Override
      public int files() {
        return files;
      }
    };
  }
}
