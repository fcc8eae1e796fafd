namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>Where something was left out and had to be guessed. Guesses of one kind err together, those of two kinds apart.</summary>
public enum MarkedGuess
{
    /// <summary>Crown or jaw, from the other and the trunk.</summary>
    Head,

    /// <summary>Parts of the left arm.</summary>
    LeftArm,

    /// <summary>Parts of the right arm.</summary>
    RightArm,

    /// <summary>Parts of the left leg.</summary>
    LeftLeg,

    /// <summary>Parts of the right leg.</summary>
    RightLeg,
}
