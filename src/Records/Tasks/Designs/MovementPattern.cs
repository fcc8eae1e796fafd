namespace Slantwise.Records.Tasks.Designs;

/// <summary>The family a task's movement belongs to.</summary>
public enum MovementPattern
{
    /// <summary>A shape held still, on points or patches, alone or with a partner.</summary>
    StaticBalance = 1,

    /// <summary>Body weight taken on the hands, held or on the move.</summary>
    WeightOnHands = 2,

    /// <summary>Turning over the body's own surface.</summary>
    Roll = 3,

    /// <summary>Leaving the floor and meeting it again.</summary>
    JumpAndLanding = 4,

    /// <summary>Jumps in time with a rope.</summary>
    RopeJumping = 5,

    /// <summary>Steps with a beat: hops, gallops, skips.</summary>
    HopAndSkip = 6,

    /// <summary>Sending with the hand.</summary>
    Throw = 7,

    /// <summary>Receiving with the hands.</summary>
    Catch = 8,

    /// <summary>Sending with a hand, foot or bat that hits.</summary>
    Strike = 9,

    /// <summary>Keeping a ball close while it bounces or rolls.</summary>
    Dribble = 10,

    /// <summary>Known movements joined into one, with a start and an end.</summary>
    Sequence = 11,
}
