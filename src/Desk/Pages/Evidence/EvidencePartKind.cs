namespace Slantwise.Desk.Pages.Evidence;

/// <summary>The kinds of number that pool a class's entries.</summary>
public enum EvidencePartKind
{
    /// <summary>A level: who tried it, and how often it was reached.</summary>
    Level = 1,

    /// <summary>A cue: how often it was left open.</summary>
    Cue = 2,

    /// <summary>Decisions after sets of one band of success.</summary>
    After = 3,

    /// <summary>Predictions against what came.</summary>
    Predictions = 4,

    /// <summary>Entries that count nowhere.</summary>
    Uncounted = 5,

    /// <summary>Pupils' checks of a cue beside the teacher's; of all cues where no task is meant.</summary>
    SelfCheck = 6,

    /// <summary>Levels chosen: of the lesson of that number, of all where it is 0.</summary>
    Moves = 7,

    /// <summary>Two neighbouring levels, and the pupils who tried both.</summary>
    Order = 8,

    /// <summary>Decisions of one pattern, its number being the place.</summary>
    Pattern = 9,

    /// <summary>Long stays at a level.</summary>
    Stays = 10,

    /// <summary>Talks: of the lesson of that number, of all where it is 0.</summary>
    Visits = 11,

    /// <summary>Remarks that put a value on a decision or corrected it.</summary>
    LevelTalk = 12,

    /// <summary>Checks of one thing from two devices.</summary>
    Observers = 13,
}
