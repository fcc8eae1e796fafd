namespace Slantwise.Records.Schools;

/// <summary>What a level asks of a body that a policy or a restriction may rule out.</summary>
public enum BodyDemand
{
    /// <summary>Hips above the head.</summary>
    Inversion = 1,

    /// <summary>Some of the body's weight on the head.</summary>
    HeadWeight = 2,

    /// <summary>Rolling over the back or a shoulder.</summary>
    Roll = 3,

    /// <summary>Landings and repeated jumps.</summary>
    Impact = 4,

    /// <summary>Body weight on the hands.</summary>
    HandWeight = 5,

    /// <summary>Somebody who holds or secures the performer.</summary>
    Spotting = 6,
}
