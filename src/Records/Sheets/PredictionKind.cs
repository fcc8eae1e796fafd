namespace Slantwise.Records.Sheets;

/// <summary>What a pupil predicts before a set.</summary>
public enum PredictionKind
{
    /// <summary>Nothing is predicted.</summary>
    Nothing = 0,

    /// <summary>How many trials of the set will succeed.</summary>
    SuccessCount = 1,

    /// <summary>How long the best hold of the set will be, in seconds.</summary>
    HoldS = 2,
}
