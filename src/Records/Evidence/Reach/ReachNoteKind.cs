namespace Slantwise.Records.Evidence.Reach;

/// <summary>What a sentence about a reach is about.</summary>
public enum ReachNoteKind
{
    /// <summary>Pupils for whom policy or restrictions leave no level.</summary>
    NothingAllowed,

    /// <summary>Pupils for whom every level is probably too hard still.</summary>
    AllTooHard,

    /// <summary>Pupils for whom every level is probably certain already.</summary>
    AllCertain,

    /// <summary>Pupils of whom it cannot be said.</summary>
    Open,

    /// <summary>A level that would include more, with a question.</summary>
    Addition,

    /// <summary>Levels that nobody is likely to need: a hint.</summary>
    Unneeded,

    /// <summary>Two levels that the model puts the other way round than the sheet, as a question.</summary>
    Order,

    /// <summary>How many pupils are mostly assumed.</summary>
    Assumed,
}
