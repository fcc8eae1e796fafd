using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Sheets;

/// <summary>What all parts of a pupil's sheet share: page, words, and how large what is marked is.</summary>
internal sealed record SheetStyle(PageFrame Frame, PaperWords Words)
{
    /// <summary>The side of a field to mark.</summary>
    public double FieldMm { get; init; } = 5.5;

    /// <summary>The height of a level's figure.</summary>
    public double FigureMm { get; init; } = 25;

    /// <summary>White above and below what a set asks.</summary>
    public double SetPadMm { get; init; } = 1.8;

    /// <summary>White between two fields.</summary>
    public double FieldGapMm { get; init; } = 2;

    /// <summary>Whether what a set asks stands under one another, not in columns.</summary>
    public bool IsStacked { get; init; }

    /// <summary>Whether drawn signs stand beside numbers and words.</summary>
    public bool HasSigns { get; init; }

    public TypeScale Type => Frame.Type;

    /// <summary>From one field to the next.</summary>
    public double PitchMm => FieldMm + FieldGapMm;

    /// <summary>The styles to try, the roomiest first.</summary>
    public static IReadOnlyList<SheetStyle> Of(PaperOptions options)
    {
        var style = new SheetStyle(PageFrame.Of(options), new PaperWords(options.Language)) { HasSigns = options.HasSigns };
        if (options.IsLargePrint) return [style with { FieldMm = 7.5, FieldGapMm = 2.5, IsStacked = true, SetPadMm = 4, FigureMm = 34 }];
        return [style, style with { FieldMm = 5, FieldGapMm = 1.8, SetPadMm = 1.5, FigureMm = 21 }];
    }
}
