namespace Slantwise.Records.Checks;

/// <summary>The bounds that the checks hold input to. Our own choice where no source is named: wide enough for a real lesson, narrow enough to catch a slip of the hand.</summary>
public static class Limits
{
    /// <summary>Tasks on a sheet, at most.</summary>
    public const int SheetTaskCount = 3;

    /// <summary>Levels of a task on a sheet, at most.</summary>
    public const int SheetLevelCount = 6;

    /// <summary>Sets on a sheet, at most.</summary>
    public const int SetCount = 4;

    /// <summary>Trials of a set, at most.</summary>
    public const int TrialCount = 10;

    /// <summary>Cues of a task, at most.</summary>
    public const int CueCount = 5;

    /// <summary>Characters in the name of a task, level, sheet or lesson, at most.</summary>
    public const int NameLength = 80;

    /// <summary>Characters in a class's name, at most.</summary>
    public const int ClassNameLength = 60;

    /// <summary>Characters in what a pupil is called, at most.</summary>
    public const int DisplayNameLength = 60;

    /// <summary>Characters in a pupil's code, at most.</summary>
    public const int CodeLength = 12;

    /// <summary>Characters in an id that a roster file gives, at most.</summary>
    public const int RosterKeyLength = 255;

    /// <summary>Characters in a cue, at most: it has to fit a line of the sheet.</summary>
    public const int CueLength = 80;

    /// <summary>Characters in a purpose, a caution, a reason or a note, at most.</summary>
    public const int SentenceLength = 300;

    /// <summary>Characters in a device's name for itself, at most.</summary>
    public const int DeviceIdLength = 64;

    /// <summary>A hold, in seconds, at most: ten minutes.</summary>
    public const int HoldS = 600;

    /// <summary>Repetitions, at most.</summary>
    public const int RepetitionsCount = 1000;

    /// <summary>A distance, in metres, at most.</summary>
    public const int DistanceM = 100;

    /// <summary>A height, in metres, at most.</summary>
    public const int HeightM = 5;

    /// <summary>The width of a target, in metres, at most.</summary>
    public const int TargetSizeM = 10;

    /// <summary>Mats in a hall, at most.</summary>
    public const int MatCount = 200;

    /// <summary>Pupils in the hall at one look, at most: several classes at once.</summary>
    public const int PresentCount = 200;

    /// <summary>A block of a lesson, in minutes, at most.</summary>
    public const int PhaseMin = 180;

    /// <summary>The longest hold with weight on the head that a policy may set, in seconds.</summary>
    public const int HeadHoldCapS = 60;

    /// <summary>Days of a step of a return, at most.</summary>
    public const int ReturnDayCount = 365;

    /// <summary>Characters in what a school does in an emergency, at most.</summary>
    public const int EmergencyNotesLength = 1000;

    /// <summary>Characters in how a pupil does a task, at most.</summary>
    public const int AdaptationLength = 120;
}
