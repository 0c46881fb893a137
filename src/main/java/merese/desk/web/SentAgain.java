package merese.desk.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;

/**
 * A form that an earlier start of the desk has made, to be looked at and sent again.
 *
 * @param action the address it was sent to
 * @param multipart whether it is a form that can bring files
 * @param fields what was typed, in its order; no file and no token
 * @param files the names of files that came with it, which a page can't hold
 * @param back the page it came from
 */
public record SentAgain(
    String action, boolean multipart, List<Field> fields, List<String> files, String back) {
  public SentAgain {
    fields = List.copyOf(fields);
    files = List.copyOf(files);
  }

  /** One value of a field. */
  public record Field(String name, String value) {}

  static SentAgain of(Context request) {
    List<Field> fields = new ArrayList<>();
    request
        .formParamMap()
        .forEach(
            (name, values) -> {
              if (!name.equals(Gate.TOKEN)) {
                values.forEach(value -> fields.add(new Field(name, value)));
              }
            });
    List<String> files = new ArrayList<>();
    if (request.isMultipartFormData()) {
      request.uploadedFiles().stream()
          .filter(file -> file.size() > 0)
          .forEach(file -> files.add(file.filename()));
    }
    String query = request.queryString();
    return new SentAgain(
        request.path() + (query == null ? "" : "?" + query),
        request.isMultipartFormData(),
        fields,
        files,
        Going.back(request));
  }
}
