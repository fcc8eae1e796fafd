using Slantwise.Records.Checks;

namespace Slantwise.Records.Safety;

/// <summary>Whether what a teacher wrote on a risk page can be kept.</summary>
public static class RiskCheck
{
    /// <summary>Controls of a task, at most.</summary>
    public const int MostControls = 8;

    /// <summary>Equipment checks of the teacher's own, at most.</summary>
    public const int MostChecks = 12;

    /// <summary>Characters in a control or a check, at most.</summary>
    public const int LineLength = 160;

    /// <summary>Characters in the notes, at most.</summary>
    public const int NotesLength = 1000;

    /// <summary>Looks at the notes.</summary>
    /// <param name="notes">What was written.</param>
    /// <param name="nameOf">What a task is called.</param>
    /// <returns>Findings in the order of the page. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(RiskNotes notes, Func<Guid, string> nameOf)
    {
        var findings = new List<Finding>();
        foreach (var task in notes.Tasks)
        {
            var name = nameOf(task.TaskId);
            if (task.Level is { } level && !Enum.IsDefined(level)) findings.Add(Finding.Refused("RiskLevelUnknown", name));
            if (task.Controls.Count > MostControls) findings.Add(Finding.Refused("RiskTooManyControls", name, MostControls, task.Controls.Count));
            for (var i = 0; i < task.Controls.Count; i++) TextCheck.Add(findings, task.Controls[i], LineLength, "RiskControlTooLong", name, i + 1);
        }
        if (notes.EquipmentChecks.Count > MostChecks) findings.Add(Finding.Refused("RiskTooManyChecks", MostChecks, notes.EquipmentChecks.Count));
        for (var i = 0; i < notes.EquipmentChecks.Count; i++) TextCheck.Add(findings, notes.EquipmentChecks[i], LineLength, "RiskCheckTooLong", i + 1);
        TextCheck.Add(findings, notes.Notes, NotesLength, "RiskNotesTooLong");
        return findings;
    }
}
