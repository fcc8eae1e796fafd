namespace Slantwise.Records.Units;

/// <summary>The bounds of a unit. Our own choice: wide enough for a year, narrow enough to be looked at on one page.</summary>
public static class UnitLimits
{
    /// <summary>Outcomes of a unit, at most.</summary>
    public const int OutcomeCount = 60;

    /// <summary>Lessons of a unit, at most.</summary>
    public const int LessonCount = 40;

    /// <summary>Tasks of a lesson, at most.</summary>
    public const int TaskCount = 6;

    /// <summary>Aims of a lesson, at most.</summary>
    public const int AimCount = 5;

    /// <summary>Steps of a demonstration, at most.</summary>
    public const int DemonstrationCount = 8;

    /// <summary>Characters of an aim or of a step to show, at most.</summary>
    public const int AimLength = 160;

    /// <summary>Characters of an outcome's code, at most.</summary>
    public const int CodeLength = 40;

    /// <summary>Characters of an outcome's text, at most.</summary>
    public const int OutcomeLength = 500;

    /// <summary>Characters of a framework's name, at most.</summary>
    public const int FrameworkLength = 120;

    /// <summary>Characters of the teacher's notes, at most.</summary>
    public const int NotesLength = 2000;
}
