package merese.change.objects;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.exchange.picture.PictureCopy;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;

/**
 * The file of a photograph of a piece: one of the library's pictures, or one from elsewhere, of
 * which a copy becomes one. Exactly one of the two is there.
 *
 * @param there its path below the folder of pictures, with "/"
 * @param copy what is to be put there
 */
record PiecePicture(Optional<String> there, Optional<PictureCopy> copy) {
  private static final String FOLDER = "objects";

  /**
   * Finds and reads it.
   *
   * @throws ChangeRefusedException where there is no such file
   * @throws merese.exchange.UnreadableException where it is from elsewhere and no picture
   */
  static PiecePicture of(LibraryFolder folder, PieceRequest.Photograph request) {
    if (request.sent().isPresent()) {
      return new PiecePicture(Optional.empty(), request.sent());
    }
    Path pictures = folder.resolve("pictures").toAbsolutePath().normalize();
    for (Path file : List.of(request.file(), below(pictures, request.typed()))) {
      Path path = file.toAbsolutePath().normalize();
      if (path.startsWith(pictures) && Files.isRegularFile(path)) {
        List<String> names = new ArrayList<>();
        pictures.relativize(path).forEach(name -> names.add(name.toString()));
        return new PiecePicture(Optional.of(String.join("/", names)), Optional.empty());
      }
    }
    if (!Files.exists(request.file())) {
      throw new ChangeRefusedException(
          request.typed()
              + ": there is no such file, neither from here nor below "
              + folder.resolve("pictures")
              + "; look at its name");
    }
    return new PiecePicture(Optional.empty(), Optional.of(PictureCopy.of(request.file())));
  }

  private static Path below(Path pictures, String typed) {
    try {
      return pictures.resolve(typed);
    } catch (InvalidPathException e) {
      throw new ChangeRefusedException("\"" + typed + "\" cannot be the name of a file");
    }
  }

  /** Its path below the folder of pictures, with "/"; a copy is put there by the change. */
  String stage(ChangeSet change, String ref, String id) {
    if (copy.isEmpty()) {
      return there.orElseThrow();
    }
    PictureCopy picture = copy.get();
    return change.addPicture(FOLDER, ref + "-" + id, picture.ending(), picture.bytes());
  }
}
