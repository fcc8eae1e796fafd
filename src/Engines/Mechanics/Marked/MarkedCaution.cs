namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>What to mind about an answer from a picture.</summary>
public enum MarkedCaution
{
    /// <summary>A segment is much shorter than the table: the picture does not show it from the side.</summary>
    Foreshortened,

    /// <summary>A segment is much longer than the table: a mark may be misplaced.</summary>
    Overlong,

    /// <summary>The line of what touches the floor and the edge of the picture disagree about what is level.</summary>
    FloorAslant,

    /// <summary>The centre of mass is not above the floor: the picture is the wrong way up, or a mark is misplaced.</summary>
    BelowFloor,

    /// <summary>Points were left out and guessed.</summary>
    Guessed,

    /// <summary>A contact was marked in one point: its size is an estimate.</summary>
    AssumedPrint,
}
