using System.Globalization;
using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Desk.Pages.Policies;

/// <summary>A school's policy and emergency notes as they stand in the form: what was typed stays as it was typed, right or wrong.</summary>
public sealed class PolicyDraft
{
    /// <summary>The form's name for the days of a step: with the demand after it.</summary>
    public const string ReturnName = "Return";

    private static readonly BodyDemand[] Demands = Enum.GetValues<BodyDemand>();

    private PolicyDraft()
    {
    }

    /// <summary>The choices by the policy's names for them, in the form's order.</summary>
    public required IReadOnlyList<(string Name, PolicyChoice Chosen)> Choices { get; init; }

    /// <summary>The conditions that are ticked.</summary>
    public required IReadOnlyList<SafetyCondition> Conditions { get; init; }

    /// <summary>The longest hold, as it was typed.</summary>
    public required string HoldCap { get; init; }

    /// <summary>The days of each step, as they were typed; empty for no step.</summary>
    public required IReadOnlyList<(BodyDemand Without, string Days)> Steps { get; init; }

    /// <summary>What to do in an emergency.</summary>
    public required string EmergencyNotes { get; init; }

    /// <summary>The form as a school's kept policy fills it in.</summary>
    /// <param name="school">The school.</param>
    public static PolicyDraft Of(School school) => new()
    {
        Choices =
        [
            (nameof(SafetyPolicy.HeadWeight), school.Policy.HeadWeight), (nameof(SafetyPolicy.Inversion), school.Policy.Inversion),
            (nameof(SafetyPolicy.Rolls), school.Policy.Rolls), (nameof(SafetyPolicy.Spotting), school.Policy.Spotting),
        ],
        Conditions = school.Policy.HeadConditions,
        HoldCap = school.Policy.HeadHoldCapS.ToString(CultureInfo.InvariantCulture),
        Steps = [.. Demands.Select(d => (d, school.Policy.ReturnSteps.FirstOrDefault(s => s.Without == d)?.DayCount.ToString(CultureInfo.InvariantCulture) ?? ""))],
        EmergencyNotes = school.EmergencyNotes,
    };

    /// <summary>The form as it was sent.</summary>
    /// <param name="sent">The values of a name; none for a box that was not ticked or a field that was not there.</param>
    /// <param name="school">The school as it is kept, for choices that were not sent.</param>
    public static PolicyDraft Read(Func<string, IReadOnlyList<string?>> sent, School school)
    {
        string Text(string name) => sent(name) is [var first, ..] ? (first ?? "").Trim() : "";
        return new()
        {
            Choices = [.. Of(school).Choices.Select(c => (c.Name, Named<PolicyChoice>(Text(c.Name)) ?? c.Chosen))],
            Conditions = [.. sent(nameof(Conditions)).Select(Named<SafetyCondition>).OfType<SafetyCondition>().Distinct().Order()],
            HoldCap = Text(nameof(HoldCap)),
            Steps = [.. Demands.Select(d => (d, Text(ReturnName + d)))],
            // A form sends a line's end as two characters, and counts it as one while it is typed.
            EmergencyNotes = Text(nameof(EmergencyNotes)).ReplaceLineEndings("\n"),
        };
    }

    /// <summary>The school with what was typed; what is not a whole number is 0, which the check refuses.</summary>
    /// <param name="school">The school as it is kept.</param>
    public School ToSchool(School school) => school with
    {
        EmergencyNotes = EmergencyNotes,
        Policy = school.Policy with
        {
            HeadWeight = Choices[0].Chosen, Inversion = Choices[1].Chosen, Rolls = Choices[2].Chosen, Spotting = Choices[3].Chosen,
            HeadConditions = Conditions,
            HeadHoldCapS = Whole(HoldCap),
            ReturnSteps = [.. Steps.Where(s => s.Days.Length > 0).Select(s => new ReturnStep(s.Without, Whole(s.Days)))],
        },
    };

    /// <summary>What stands in the way of saving it.</summary>
    /// <param name="school">The school as it is kept.</param>
    public IReadOnlyList<Finding> Findings(School school) => PolicyCheck.Of(ToSchool(school));

    private static int Whole(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : 0;

    private static T? Named<T>(string? name)
        where T : struct, Enum => Enum.TryParse<T>(name, out var value) && Enum.IsDefined(value) ? value : null;
}
