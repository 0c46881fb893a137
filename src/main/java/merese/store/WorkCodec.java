package merese.store;

import merese.model.Contributor;
import merese.model.SourceKind;
import merese.model.Work;
import merese.model.WorkLink;

/** The file of a work. */
final class WorkCodec implements Codec<Work> {
  static final WorkCodec WORK = new WorkCodec();

  private static final Codes<SourceKind> KIND =
      new Codes<>("a kind of source", SourceKind.values());

  private WorkCodec() {}

  @Override
  public Work read(Fields in) {
    return new Work(
        in.text("id"),
        in.code("kind", KIND),
        in.text("title"),
        in.optionalText("subtitle"),
        in.texts("alternateTitles"),
        in.list("contributors", Contributors.CODEC),
        in.optionalText("language"),
        in.flag("mine", false),
        in.list("editions", EditionCodec.EDITION),
        in.list("links", Links.CODEC));
  }

  @Override
  public void write(Work work, ObjectBuilder out) {
    out.text("id", work.id());
    out.code("kind", work.kind());
    out.text("title", work.title());
    out.text("subtitle", work.subtitle());
    out.texts("alternateTitles", work.alternateTitles());
    out.list("contributors", work.contributors(), Contributors.CODEC);
    out.text("language", work.language());
    out.flag("mine", work.mine(), false);
    out.list("editions", work.editions(), EditionCodec.EDITION);
    out.list("links", work.links(), Links.CODEC);
  }

  /** The name's keys stand beside the role. */
  private static final class Contributors implements Codec<Contributor> {
    static final Contributors CODEC = new Contributors();

    private static final Codes<Contributor.Role> ROLE =
        new Codes<>("a role", Contributor.Role.values());

    @Override
    public Contributor read(Fields in) {
      return new Contributor(in.code("role", ROLE), NameCodec.NAME.read(in));
    }

    @Override
    public void write(Contributor contributor, ObjectBuilder out) {
      out.code("role", contributor.role());
      NameCodec.NAME.write(contributor.name(), out);
    }
  }

  private static final class Links implements Codec<WorkLink> {
    static final Links CODEC = new Links();

    private static final Codes<WorkLink.Kind> KIND =
        new Codes<>("a kind of link", WorkLink.Kind.values());

    @Override
    public WorkLink read(Fields in) {
      return new WorkLink(
          in.code("kind", KIND),
          in.text("to"),
          in.optionalText("picture"),
          in.optionalText("evidence"));
    }

    @Override
    public void write(WorkLink link, ObjectBuilder out) {
      out.code("kind", link.kind());
      out.text("to", link.to());
      out.text("picture", link.picture());
      out.text("evidence", link.evidence());
    }
  }
}
