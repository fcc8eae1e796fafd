using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Sheets;

/// <summary>What all parts of a pupil's sheet share: page, words, and how large what is marked is.</summary>
internal sealed record SheetStyle(PageFrame Frame, PaperWords Words)
{
    /// <summary>The side of a field to mark.</summary>
    public double FieldMm { get; init; } = 5.5;

    /// <summary>White between two fields.</summary>
    public double FieldGapMm { get; init; } = 2;

    /// <summary>Whether what a set asks stands under one another, not in columns.</summary>
    public bool IsStacked { get; init; }

    public TypeScale Type => Frame.Type;

    /// <summary>From one field to the next.</summary>
    public double PitchMm => FieldMm + FieldGapMm;
}
