using Slantwise.Engines.Drawing;

namespace Slantwise.Paper.Layout;

/// <summary>Collects the shapes of a page.</summary>
internal sealed class Sketch
{
    /// <summary>Width of lines that only guide the eye.</summary>
    public const double HairlineMm = 0.2;

    /// <summary>Width of the edges of what is written into.</summary>
    public const double EdgeMm = 0.3;

    private readonly List<Shape> _shapes = [];

    public IReadOnlyList<Shape> Shapes => _shapes;

    public void Add(Shape shape) => _shapes.Add(shape);

    /// <summary>One line of text; nothing for an empty one.</summary>
    public void Words(
        double xMm, double baselineMm, string words, double sizePt, Tone tone = Tone.Ink,
        TextWeight weight = TextWeight.Regular, TextAnchor anchor = TextAnchor.Start)
    {
        if (words.Length > 0) Add(new Text(xMm, baselineMm, words, sizePt, tone, anchor, weight));
    }

    /// <summary>Lines under one another from a top edge.</summary>
    public void Paragraph(
        double xMm, double topMm, IReadOnlyList<string> lines, double sizePt, Tone tone = Tone.Ink,
        TextWeight weight = TextWeight.Regular, TextAnchor anchor = TextAnchor.Start)
    {
        for (var i = 0; i < lines.Count; i++)
            Words(xMm, topMm + i * TypeScale.LineMm(sizePt) + TypeScale.AscentMm(sizePt), lines[i], sizePt, tone, weight, anchor);
    }

    /// <summary>Text with its middle at a point.</summary>
    public void Centred(double xMm, double yMm, string words, double sizePt, Tone tone = Tone.Ink, TextWeight weight = TextWeight.Regular) =>
        Words(xMm, yMm + TypeScale.HalfCapitalMm(sizePt), words, sizePt, tone, weight, TextAnchor.Middle);

    /// <summary>A level line, thin and quiet unless told otherwise.</summary>
    public void Rule(double leftMm, double rightMm, double yMm, Tone tone = Tone.Faint, double widthMm = HairlineMm) =>
        Add(new Line(leftMm, yMm, rightMm, yMm, widthMm, tone));

    /// <summary>A box to write in.</summary>
    public void Field(double xMm, double yMm, double widthMm, double heightMm, double radiusMm = 1) =>
        Add(new Box(xMm, yMm, widthMm, heightMm, Tone.Faint, EdgeMm, radiusMm));
}
