package merese.desk.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.GZIPOutputStream;

/**
 * The style, the scripts and the libraries that pages load: a fixed list from the program itself.
 * An address holds the file's hash, so that a browser keeps what it has until it has changed.
 */
public final class Assets {
  private static final String OURS = "merese/desk/";
  private static final String LIBRARIES = "META-INF/resources/webjars/";

  /** What each file is put together from. */
  private static final Map<String, List<String>> PLACES =
      Map.of(
          "desk.css",
          List.of(
              OURS + "desk.css",
              OURS + "charts.css",
              OURS + "note.css",
              OURS + "shelf.css",
              OURS + "vocabulary.css",
              OURS + "lists.css"),
          "desk.js",
          List.of(OURS + "desk.js"),
          "charts.js",
          List.of(OURS + "charts.js"),
          "note.js",
          List.of(OURS + "note.js"),
          "show.js",
          List.of(OURS + "show.js"),
          "icon.svg",
          List.of(OURS + "icon.svg"),
          "htmx.js",
          List.of(LIBRARIES + "htmx.org/2.0.8/dist/htmx.min.js"),
          "d3.js",
          List.of(LIBRARIES + "d3/7.9.0/dist/d3.min.js"));

  private record Asset(String type, byte[] bytes, byte[] packed, String hash) {}

  private final Map<String, Asset> assets = new TreeMap<>();

  Assets() {
    PLACES.forEach((name, places) -> assets.put(name, read(name, places)));
  }

  private static Asset read(String name, List<String> places) {
    try {
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      for (String place : places) {
        copy(place, all);
      }
      byte[] bytes = all.toByteArray();
      return new Asset(type(name), bytes, packed(bytes), hash(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void copy(String place, OutputStream to) throws IOException {
    try (InputStream in = Assets.class.getClassLoader().getResourceAsStream(place)) {
      if (in == null) {
        throw new IllegalStateException(place + " is not in the program");
      }
      in.transferTo(to);
    }
  }

  private static String type(String name) {
    String ending = name.substring(name.lastIndexOf('.'));
    return switch (ending) {
      case ".css" -> "text/css; charset=utf-8";
      case ".svg" -> "image/svg+xml";
      default -> "text/javascript; charset=utf-8";
    };
  }

  private static byte[] packed(byte[] bytes) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(bytes);
    }
    return packed.toByteArray();
  }

  private static String hash(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The address of a file of the list. */
  public String address(String name) {
    return "/assets/" + assets.get(name).hash() + "/" + name;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/assets/{hash}/{name}", this::send);
    routes.get("/favicon.ico", request -> request.redirect(address("icon.svg")));
  }

  private void send(Context request) {
    Asset asset = assets.get(request.pathParam("name"));
    if (asset == null) {
      throw new NotThereException("there is no such file");
    }
    request.contentType(asset.type());
    request.header("Cache-Control", "max-age=31536000, immutable");
    String accepted = request.header("Accept-Encoding");
    if (accepted != null && accepted.contains("gzip")) {
      request.disableCompression().header("Content-Encoding", "gzip").result(asset.packed());
    } else {
      request.result(asset.bytes());
    }
  }
}
