namespace Slantwise.Records.Floor;

/// <summary>Why the floor does not do what it was asked. Each is a problem code of docs/sync.md, written in camel case there.</summary>
public enum FloorProblemKind
{
    /// <summary>No lesson has this code.</summary>
    CodeUnknown,

    /// <summary>The code has run out: the teacher renews it.</summary>
    CodeExpired,

    /// <summary>A link's ticket is none of ours, or has run out.</summary>
    TicketInvalid,

    /// <summary>Too many wrong codes from one place.</summary>
    TooManyTries,

    /// <summary>The token is none of ours, has run out, or its lesson is no longer here.</summary>
    TokenInvalid,

    /// <summary>The lesson has ended, or was never opened, for what was asked.</summary>
    LessonClosed,

    /// <summary>The lesson has no sheet that could be used.</summary>
    LessonWithoutSheet,

    /// <summary>As many devices as a lesson takes have joined.</summary>
    LessonFull,

    /// <summary>A pupil who is not in the class.</summary>
    PupilUnknown,

    /// <summary>A device that never joined this lesson.</summary>
    DeviceUnknown,

    /// <summary>More or fewer pupils than such a device serves.</summary>
    PupilCount,

    /// <summary>Not for this kind of device.</summary>
    NotAllowed,

    /// <summary>More entries than a batch may hold.</summary>
    BatchTooLarge,

    /// <summary>More bytes than a body may have.</summary>
    BodyTooLarge,

    /// <summary>A body that cannot be read as what it should be.</summary>
    BodyUnreadable,

    /// <summary>More requests than a device needs, or more open streams.</summary>
    TooOften,

    /// <summary>The device's id has joined this lesson as something else.</summary>
    DeviceIdTaken,

    /// <summary>A device's name that is empty or too long.</summary>
    NameLength,

    /// <summary>The store could not take it now; nothing was lost, and it is worth trying again.</summary>
    Busy,
}
