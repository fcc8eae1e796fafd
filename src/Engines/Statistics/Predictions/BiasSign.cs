namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>On which side a pupil's predictions lie, as far as there are enough of them to say.</summary>
public enum BiasSign
{
    /// <summary>The predictions cannot tell.</summary>
    Unclear = 0,

    /// <summary>More is predicted than is to be expected.</summary>
    Over = 1,

    /// <summary>Less is.</summary>
    Under = 2,
}
