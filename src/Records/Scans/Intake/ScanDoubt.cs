namespace Slantwise.Records.Scans.Intake;

/// <summary>Why a person has to look at an item.</summary>
public enum ScanDoubt
{
    /// <summary>Nobody has to.</summary>
    None = 0,

    /// <summary>A faint or small mark that may not be meant.</summary>
    Faint = 1,

    /// <summary>One mark and something beside it, or several that may not be meant.</summary>
    Unclear = 2,

    /// <summary>Several marks where one belongs.</summary>
    SeveralMarked = 3,

    /// <summary>Trials are marked and no level is.</summary>
    ChoiceMissing = 4,

    /// <summary>The mark stands for something the lesson's sheet does not have.</summary>
    NotOnSheet = 5,

    /// <summary>Something else was entered before.</summary>
    Differs = 6,

    /// <summary>Written by hand: to be typed if it is wanted, and nothing waits for it.</summary>
    ByHand = 7,

    /// <summary>Cues are checked and the set that was watched is not marked.</summary>
    SetMissing = 8,
}
