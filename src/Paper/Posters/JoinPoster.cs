using Slantwise.Engines.Drawing;
using Slantwise.Paper.Cards;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Posters;

/// <summary>How to join a lesson with a tablet, on one page for the wall: a symbol, a code and three steps.</summary>
public static class JoinPoster
{
    private const double BorderMm = 14;
    private const double GapMm = 7;
    private const double SymbolFraction = 0.34;
    private const double TitlePt = 44;
    private const double CodePt = 110;
    private const double StepPt = 26;
    private const double StepFraction = 0.96;

    /// <summary>The page, standing.</summary>
    /// <param name="invitation">What it says.</param>
    /// <param name="options">Paper, language, spacing, cream.</param>
    /// <returns>One page. It says until when the code on it works; after that it is of no use.</returns>
    /// <exception cref="ArgumentException">A link that is empty or too long for a symbol; an invitation without a code.</exception>
    public static Scene Of(JoinInvitation invitation, PaperOptions options)
    {
        if (invitation.Code.Length == 0) throw new ArgumentException("An invitation has a code; this one has none.", nameof(invitation));
        var frame = PageFrame.Of(options.Size);
        var (words, type) = (new CardWords(options.Language), CardScale.TypeOf(options));
        var area = new Area(0, 0, frame.WidthMm, frame.HeightMm).Inside(BorderMm);
        var sketch = new Sketch(type);
        var (day, time) = (DateOnly.FromDateTime(invitation.Until.DateTime), invitation.Until.DateTime.ToString("H:mm", options.Language));
        string[] until = [words.Of("JoinUntil", time, new PaperWords(options.Language).Date(day)), words["JoinAfter"]];

        var top = area.TopMm;
        top = Middle(sketch, type, area, top, words["JoinTitle"], TitlePt) + GapMm / 2;
        top = Middle(sketch, type, area, top, invitation.ClassName, StepPt, Tone.Muted, TextWeight.Regular) + GapMm;
        var side = area.HeightMm * SymbolFraction;
        sketch.Add(LinkSymbol.Shape(invitation.Link, area.MiddleMm - side / 2, top, side));
        top = Code(sketch, type, area, top + side + GapMm, Halved(invitation.Code));
        Foot(sketch, type, area, until, out var footTop);
        Steps(sketch, type, area with { TopMm = top + GapMm, HeightMm = footTop - GapMm - top - GapMm }, [words.Of("JoinStepOpen", invitation.Address), words["JoinStepCode"], words["JoinStepName"]]);

        var scene = new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, words.Of("JoinDescription", invitation.ClassName, invitation.Code, string.Join(' ', until)));
        return options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene;
    }

    // Two groups are easier to keep in mind on the way from the wall than six characters in a row.
    private static string Halved(string code) => $"{code[..(code.Length / 2)]} {code[(code.Length / 2)..]}";

    // One line, as large as it may be and the page is wide.
    private static double Middle(
        Sketch sketch, TypeScale type, Area area, double topMm, string words, double mostPt, Tone tone = Tone.Ink, TextWeight weight = TextWeight.Bold)
    {
        var size = Sizes(mostPt).First(s => type.WidthMm(words, s, weight) <= area.WidthMm || s == CardScale.LeastPt);
        sketch.Words(area.MiddleMm, topMm + TypeScale.AscentMm(size), words, size, tone, weight, TextAnchor.Middle);
        return topMm + type.LineMm(size);
    }

    // Capitals and digits alone: the room of a line above and below them would be lost.
    private static double Code(Sketch sketch, TypeScale type, Area area, double topMm, string words)
    {
        var size = Sizes(CodePt).First(s => type.WidthMm(words, s, TextWeight.Bold) <= area.WidthMm || s == CardScale.LeastPt);
        var capital = 2 * TypeScale.HalfCapitalMm(size);
        sketch.Words(area.MiddleMm, topMm + capital, words, size, weight: TextWeight.Bold, anchor: TextAnchor.Middle);
        return topMm + capital + GapMm;
    }

    private static void Steps(Sketch sketch, TypeScale type, Area area, IReadOnlyList<string> steps)
    {
        var size = Sizes(StepPt).First(s => Height(s) <= area.HeightMm || s == CardScale.LeastPt);
        var top = area.TopMm + (area.HeightMm - Height(size)) / 2;
        for (var i = 0; i < steps.Count; i++)
        {
            var lines = Lines(steps[i], size);
            sketch.Add(new Disc(area.LeftMm + Disc(size), top + type.LineMm(size) / 2, Disc(size), Tone.Accent));
            sketch.Centred(area.LeftMm + Disc(size), top + type.LineMm(size) / 2, $"{i + 1}", CardScale.NumberPt(size), Tone.Ground, TextWeight.Bold);
            sketch.Paragraph(area.LeftMm + Indent(size), top, lines, size);
            top += lines.Count * type.LineMm(size) + GapMm / 2;
        }

        IReadOnlyList<string> Lines(string step, double sizePt) => type.Lines(step, area.WidthMm - Indent(sizePt), sizePt);

        double Height(double sizePt) => steps.Sum(s => Lines(s, sizePt).Count * type.LineMm(sizePt)) + (steps.Count - 1) * GapMm / 2;
    }

    private static double Disc(double sizePt) => Math.Max(sizePt * 0.22, CardScale.LeastPt * 0.3);

    private static double Indent(double sizePt) => Disc(sizePt) * 2.8;

    private static void Foot(Sketch sketch, TypeScale type, Area area, IReadOnlyList<string> until, out double topMm)
    {
        var size = type.LeadPt;
        var lines = until.SelectMany(sentence => type.Lines(sentence, area.WidthMm, size)).ToList();
        topMm = area.BottomMm - lines.Count * type.LineMm(size);
        sketch.Rule(area.LeftMm, area.RightMm, topMm - GapMm / 2);
        sketch.Paragraph(area.MiddleMm, topMm, lines, size, Tone.Muted, anchor: TextAnchor.Middle);
    }

    private static IEnumerable<double> Sizes(double mostPt)
    {
        for (var size = mostPt; size > CardScale.LeastPt; size *= StepFraction) yield return size;
        yield return CardScale.LeastPt;
    }
}
