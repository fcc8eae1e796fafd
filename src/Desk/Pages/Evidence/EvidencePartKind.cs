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

    /// <summary>Decisions after sets at a level.</summary>
    LevelDecisions = 7,

    /// <summary>A cue in the sets at a level: the place holds both, see <see cref="EvidencePart.LevelCue"/>.</summary>
    LevelCue = 8,

    /// <summary>Levels chosen: of the lesson of that number, of all where it is 0.</summary>
    Moves = 9,

    /// <summary>Two neighbouring levels, and the pupils who tried both.</summary>
    Order = 10,

    /// <summary>Decisions of one pattern, its number being the place.</summary>
    Pattern = 11,

    /// <summary>Long stays at a level.</summary>
    Stays = 12,

    /// <summary>Talks: of the lesson of that number, of all where it is 0.</summary>
    Visits = 13,

    /// <summary>Remarks that put a value on a decision or corrected it.</summary>
    LevelTalk = 14,

    /// <summary>Checks of one thing from two devices.</summary>
    Observers = 15,
}
