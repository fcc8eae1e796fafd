using Slantwise.Engines.Drawing;

namespace Slantwise.Paper.LessonPages;

/// <summary>A line of a column.</summary>
/// <param name="Words">What it says.</param>
/// <param name="Mark">What stands before it: a number, a box to tick, or nothing.</param>
internal sealed record PageLine(string Words, string Mark = "")
{
    /// <summary>A mark that is drawn: a box to tick.</summary>
    public const string Box = "box";

    /// <summary>A mark that only keeps its room, for the second line of an item.</summary>
    public const string Indent = " ";

    public bool IsBold { get; init; }

    public Tone Tone { get; init; } = Tone.Ink;
}
