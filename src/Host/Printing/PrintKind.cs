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

    /// <summary>A card for each task, to lie where it is practised.</summary>
    Stations = 4,

    /// <summary>A poster for each task, and one with the way of a set.</summary>
    Poster = 5,

    /// <summary>A card for each cue, to cut apart.</summary>
    Cues = 6,

    /// <summary>The lesson on one page, for the teacher.</summary>
    Lesson = 7,

    /// <summary>All a substitute needs, in one document.</summary>
    Pack = 8,

    /// <summary>The lesson's risk page, to sign by hand.</summary>
    Risk = 9,
}
