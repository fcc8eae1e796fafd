namespace Slantwise.Desk.Pages.Scans;

/// <summary>What became of a page of a pile.</summary>
public enum PileLineKind
{
    /// <summary>Read, and nobody has to look at it.</summary>
    Taken = 1,

    /// <summary>Read; some of its boxes wait for a person.</summary>
    Asks = 2,

    /// <summary>Kept, and something has to be said or done about the whole page first.</summary>
    Held = 3,

    /// <summary>Read before; it said nothing new.</summary>
    Again = 4,

    /// <summary>Not read, or it belongs elsewhere.</summary>
    Unread = 5,
}
