namespace Slantwise.Records.Floor;

/// <summary>What a device in a lesson is there for, and with it what it may see and write.</summary>
public enum FloorDeviceKind
{
    /// <summary>One pupil's: sees and writes that pupil's own.</summary>
    Pupil = 1,

    /// <summary>Shared by two who take turns: sees and writes both pupils' own.</summary>
    Pair = 2,

    /// <summary>Stays where it lies: anyone of the class picks their name, and nobody sees another's entries unless they pick it.</summary>
    Station = 3,

    /// <summary>The teacher's: sees the class, writes visits, checks, phases, scans and notes.</summary>
    Teacher = 4,

    /// <summary>The projector's: sees tasks, countdown and stop; no pupil, and it writes nothing.</summary>
    Board = 5,
}
