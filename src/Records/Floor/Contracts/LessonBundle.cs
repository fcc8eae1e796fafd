using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Floor.Contracts;

/// <summary>Everything a device needs for a lesson without a network, and nothing it may not see.</summary>
public sealed record LessonBundle
{
    /// <summary>The making of bundles this one follows; a device refuses another.</summary>
    public const int CurrentFormat = 1;

    /// <summary>See <see cref="CurrentFormat"/>.</summary>
    public int Format { get; init; } = CurrentFormat;

    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The lesson.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>The day, in the school's calendar.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What the lesson is called; may be empty.</summary>
    public required string LessonTitle { get; init; }

    /// <summary>The class.</summary>
    public required string ClassName { get; init; }

    /// <summary>What the device is there for.</summary>
    public required FloorDeviceKind Kind { get; init; }

    /// <summary>The frozen version of the sheet.</summary>
    public required int SheetVersion { get; init; }

    /// <summary>The heading the pupil reads.</summary>
    public required string SheetTitle { get; init; }

    /// <summary>Sets a task.</summary>
    public required int SetCount { get; init; }

    /// <summary>Trials a set.</summary>
    public required int TrialCount { get; init; }

    /// <summary>What is predicted before each set.</summary>
    public required PredictionKind Predicts { get; init; }

    /// <summary>The tasks in order.</summary>
    public required IReadOnlyList<BundleTask> Tasks { get; init; }

    /// <summary>The figures of those levels, each once.</summary>
    public required IReadOnlyList<BundleFigure> Figures { get; init; }

    /// <summary>The tasks in other languages; empty where there are none.</summary>
    public required IReadOnlyList<BundleTranslation> Translations { get; init; }

    /// <summary>The pupils the device serves, by label: its own; the class for a station and the teacher; nobody for the board.</summary>
    public required IReadOnlyList<BundlePupil> Pupils { get; init; }

    /// <summary>The planned phases of the lesson, for the teacher's clock; empty for others.</summary>
    public required IReadOnlyList<BundlePhase> Phases { get; init; }

    /// <summary>
    /// The entries about those pupils so far, superseded ones included, without the teacher's visits, checks and notes unless it is the teacher's; for a
    /// station none, since whoever picks a name is not asked who they are.
    /// </summary>
    public required IReadOnlyList<Entry> Entries { get; init; }
}
