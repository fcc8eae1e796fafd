using System.Globalization;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Safety;

/// <summary>A lesson's risk page: what is proposed from its tasks, with the teacher's words in place of it where there are any.</summary>
public sealed record RiskPage
{
    /// <summary>The lesson.</summary>
    public required LessonRecord Record { get; init; }

    /// <summary>The language it is written in.</summary>
    public required CultureInfo Culture { get; init; }

    /// <summary>The tasks, in the order of the sheet.</summary>
    public IReadOnlyList<RiskTask> Tasks { get; init; } = [];

    /// <summary>What is proposed to be looked at before the lesson.</summary>
    public IReadOnlyList<string> ProposedChecks { get; init; } = [];

    /// <summary>What the teacher looks at beyond that.</summary>
    public IReadOnlyList<string> OwnChecks { get; init; } = [];

    /// <summary>How many pupils have restrictions on the day and what that removes, in sentences. Never who and never why.</summary>
    public IReadOnlyList<string> RestrictionLines { get; init; } = [];

    /// <summary>Who has restrictions on the day, by label; empty where the teacher did not ask for names.</summary>
    public IReadOnlyList<Pupil> NamedPupils { get; init; } = [];

    /// <summary>The school's emergency notes.</summary>
    public string EmergencyNotes => Record.School.EmergencyNotes;

    /// <summary>Anything else the teacher wrote.</summary>
    public string Notes { get; init; } = "";

    /// <summary>What the page does not know yet.</summary>
    public IReadOnlyList<RiskGap> Gaps { get; init; } = [];

    /// <summary>Makes the page.</summary>
    /// <param name="record">The lesson.</param>
    /// <param name="material">What is known beside it.</param>
    /// <param name="culture">The language of our own words; the teacher's stay as written.</param>
    public static RiskPage Of(LessonRecord record, RiskMaterial material, CultureInfo culture) => new RiskPageMaking(record, material, culture).Page();

    /// <summary>Words of the page, in its language.</summary>
    /// <param name="key">Their name.</param>
    /// <param name="gaps">What the gaps are filled with.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public string Say(string key, params object[] gaps) => RiskWords.Text(key, Culture, gaps);
}
