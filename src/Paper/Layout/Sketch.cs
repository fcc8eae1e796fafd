using Slantwise.Engines.Drawing;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Layout;

/// <summary>Collects the shapes of a page, and with them what can be marked: what is drawn is what a reader looks for.</summary>
internal sealed class Sketch(TypeScale type)
{
    /// <summary>Width of lines that only guide the eye.</summary>
    public const double HairlineMm = 0.2;

    /// <summary>Width of the edges of what is written into.</summary>
    public const double EdgeMm = 0.3;

    private readonly List<Shape> _shapes = [];
    private readonly List<MarkField> _marks = [];
    private readonly List<WrittenField> _writings = [];

    public IReadOnlyList<Shape> Shapes => _shapes;

    public IReadOnlyList<MarkField> Marks => _marks;

    public IReadOnlyList<WrittenField> Writings => _writings;

    public void Add(Shape shape) => _shapes.Add(shape);

    /// <summary>One line of text; nothing for an empty one.</summary>
    public void Words(
        double xMm, double baselineMm, string words, double sizePt, Tone tone = Tone.Ink,
        TextWeight weight = TextWeight.Regular, TextAnchor anchor = TextAnchor.Start)
    {
        if (words.Length > 0) Add(new Text(xMm, baselineMm, words, sizePt, tone, anchor, weight) { Spacing = type.SpacingOf(sizePt) });
    }

    /// <summary>Lines under one another from a top edge.</summary>
    public void Paragraph(
        double xMm, double topMm, IReadOnlyList<string> lines, double sizePt, Tone tone = Tone.Ink,
        TextWeight weight = TextWeight.Regular, TextAnchor anchor = TextAnchor.Start)
    {
        for (var i = 0; i < lines.Count; i++)
            Words(xMm, topMm + i * type.LineMm(sizePt) + TypeScale.AscentMm(sizePt), lines[i], sizePt, tone, weight, anchor);
    }

    /// <summary>Text with its middle at a point.</summary>
    public void Centred(double xMm, double yMm, string words, double sizePt, Tone tone = Tone.Ink, TextWeight weight = TextWeight.Regular) =>
        Words(xMm, yMm + TypeScale.HalfCapitalMm(sizePt), words, sizePt, tone, weight, TextAnchor.Middle);

    /// <summary>A level line, thin and quiet unless told otherwise.</summary>
    public void Rule(double leftMm, double rightMm, double yMm, Tone tone = Tone.Faint, double widthMm = HairlineMm) =>
        Add(new Line(leftMm, yMm, rightMm, yMm, widthMm, tone));

    /// <summary>A box that holds words together, or is filled by hand and not read.</summary>
    public void Field(double xMm, double yMm, double widthMm, double heightMm, double radiusMm = 1) =>
        Add(new Box(xMm, yMm, widthMm, heightMm, Tone.Faint, EdgeMm, radiusMm));

    /// <summary>A place to mark, empty inside, its outline dark enough to be found in a photo.</summary>
    public void Mark(SheetField field, double xMm, double yMm, double sizeMm, bool isRound)
    {
        var (x, y, size) = (Kept(xMm), Kept(yMm), Kept(sizeMm));
        _marks.Add(new MarkField(field.Key, field.Group, x, y, size, size, isRound));
        if (isRound) Add(new Disc(x + size / 2, y + size / 2, size / 2, Tone.Muted, EdgeMm));
        else Add(new Box(x, y, size, size, Tone.Muted, EdgeMm));
    }

    /// <summary>A place to write, which a reader keeps as a picture; what shows it is drawn by whoever asks for it.</summary>
    public void Writing(SheetField field, double xMm, double yMm, double widthMm, double heightMm) =>
        _writings.Add(new WrittenField(field.Key, Kept(xMm), Kept(yMm), Kept(widthMm), Kept(heightMm)));

    // As a layout is kept: drawn and kept places are the same to the digit.
    private static double Kept(double lengthMm) => Math.Round(lengthMm, 2);
}
