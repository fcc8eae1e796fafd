namespace Slantwise.Records.Tasks.Designs;

/// <summary>A part of the body, or a person, that carries weight in a task.</summary>
public enum SupportPart
{
    /// <summary>Foot, sole or toes.</summary>
    Foot = 1,

    /// <summary>Knee and shin.</summary>
    Knee = 2,

    /// <summary>Seat.</summary>
    Seat = 3,

    /// <summary>Back, lying.</summary>
    Back = 4,

    /// <summary>Chest and belly, lying.</summary>
    Front = 5,

    /// <summary>Side of the body, lying.</summary>
    Side = 6,

    /// <summary>Shoulders and upper back.</summary>
    Shoulder = 7,

    /// <summary>Forearm and elbow.</summary>
    Forearm = 8,

    /// <summary>Hand or fingers.</summary>
    Hand = 9,

    /// <summary>Head. Gated by the school's policy.</summary>
    Head = 10,

    /// <summary>A partner, who carries or is leaned on.</summary>
    Partner = 11,
}
