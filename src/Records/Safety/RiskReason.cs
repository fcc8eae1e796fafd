namespace Slantwise.Records.Safety;

/// <summary>What about a task made the working rule propose more than the usual care.</summary>
public enum RiskReason
{
    /// <summary>A level that is offered puts weight on the head.</summary>
    HeadWeight = 1,

    /// <summary>A level that is offered has the hips above the head.</summary>
    Inversion = 2,

    /// <summary>A level that is offered rolls.</summary>
    Roll = 3,

    /// <summary>A level that is offered takes body weight on the hands.</summary>
    HandWeight = 4,

    /// <summary>A level that is offered lands or jumps again and again.</summary>
    Impact = 5,

    /// <summary>A level that is offered has a height to jump from, over or to.</summary>
    Height = 6,

    /// <summary>Something is thrown, caught or struck.</summary>
    Flying = 7,

    /// <summary>Something swings that could hit a neighbour.</summary>
    Swinging = 8,

    /// <summary>In another task of the lesson something is thrown, caught or struck.</summary>
    FlyingNearby = 9,
}
