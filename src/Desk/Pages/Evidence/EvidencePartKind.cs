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
}
