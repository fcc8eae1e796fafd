using Slantwise.Records.Units;

namespace Slantwise.Desk.Pages.Units;

/// <summary>An outcome while it is being typed.</summary>
/// <param name="id">Its id.</param>
public sealed class OutcomeDraft(Guid id)
{
    /// <summary>The outcome's id.</summary>
    public Guid Id => id;

    /// <summary>Its code.</summary>
    public string Code { get; set; } = "";

    /// <summary>What it says.</summary>
    public string Text { get; set; } = "";

    /// <summary>Where it comes from.</summary>
    public string Framework { get; set; } = "";

    /// <summary>What it is called on the page: its code and words, or a number while it has neither.</summary>
    /// <param name="number">Its number, from 1.</param>
    public string Label(int number) => (Code.Trim() + " " + Text.Trim()).Trim() is { Length: > 0 } said ? said : Words.PlannerWords.Say("OutcomeNumbered", number);

    /// <summary>An outcome to go on with.</summary>
    /// <param name="outcome">The outcome as it is kept or was read.</param>
    public static OutcomeDraft Of(Outcome outcome) => new(outcome.Id) { Code = outcome.Code, Text = outcome.Text, Framework = outcome.Framework };

    /// <summary>The outcome as typed.</summary>
    public Outcome ToOutcome() => new(Id, Code.Trim(), Text.Trim(), Framework.Trim());
}
