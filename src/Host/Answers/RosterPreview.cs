using System.Text;
using Slantwise.Host.Words;
using Slantwise.Records.Roster;

namespace Slantwise.Host.Answers;

/// <summary>What a roster import does, in lines: added, changed, left.</summary>
internal static class RosterPreview
{
    public static string Of(RosterPlan plan, bool isSaved)
    {
        var text = new StringBuilder();
        foreach (var item in plan.Added) text.AppendLine(HostWords.Say("Roster" + item.Kind + "Added", item.Label, item.Code, item.ClassName));
        foreach (var item in plan.Changed)
            text.AppendLine(HostWords.Say("RosterChanged", item.Label, HostWords.Say("RosterField" + item.Field), item.From ?? HostWords.Say("None"), item.To));
        foreach (var item in plan.Left) text.AppendLine(HostWords.Say("RosterLeft", item.Label, item.Code, item.ClassName));
        text.Append(HostWords.Say(
            plan.IsEmpty ? "RosterNothing" : isSaved ? "RosterSaved" : "RosterNotSaved",
            plan.Added.Count, plan.Changed.Count, plan.Left.Count, plan.SameCount));
        return text.ToString();
    }
}
