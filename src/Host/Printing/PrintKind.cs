namespace Slantwise.Host.Printing;

/// <summary>What is printed of a lesson.</summary>
internal enum PrintKind
{
    /// <summary>A task sheet for each pupil.</summary>
    Sheets = 1,

    /// <summary>The class on one sheet, for the teacher.</summary>
    Class = 2,

    /// <summary>The class on a form for what the teacher sees.</summary>
    Observation = 3,
}
