namespace Slantwise.Records.Scans;

/// <summary>What a field of a printed sheet stands for.</summary>
public enum SheetFieldKind
{
    /// <summary>The level chosen for a set; the number is the level's on the sheet.</summary>
    Level = 1,

    /// <summary>The predicted number of successes, or of seconds where a hold is predicted; the number is what is predicted.</summary>
    Predicted = 2,

    /// <summary>A trial that was managed; the number is the trial's.</summary>
    Held = 3,

    /// <summary>A trial that was not managed; the number is the trial's.</summary>
    NotYet = 4,

    /// <summary>The seconds of a trial, by hand; the number is the trial's.</summary>
    Seconds = 5,

    /// <summary>A cue the pupil saw met; the number is the cue's.</summary>
    Cue = 6,

    /// <summary>What comes next; the number is <c>(int)</c> of a <see cref="Entries.NextLevel"/>.</summary>
    Next = 7,

    /// <summary>Why, by hand.</summary>
    Because = 8,

    /// <summary>What the pupil found out, by hand.</summary>
    OwnWords = 9,

    /// <summary>A cue the teacher saw met, on the observation sheet; the number is the cue's.</summary>
    TeacherMet = 10,

    /// <summary>A cue the teacher saw not met, on the observation sheet; the number is the cue's.</summary>
    TeacherNotMet = 11,

    /// <summary>Whose it is on a sheet without a name, by hand.</summary>
    Name = 12,

    /// <summary>The set the teacher watched a pupil in, on the observation sheet; the number is the set's. Not printed on a sheet with one set.</summary>
    TeacherSet = 13,
}
