using System.Globalization;

namespace Slantwise.Records.Planning;

/// <summary>What is tried in a plan, in a few words each.</summary>
public static class PlanningChoiceReading
{
    /// <summary>Everything that is chosen, in the order of the page.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>Empty for the usual.</returns>
    public static IReadOnlyList<string> Of(PlanningChoice choice, CultureInfo culture)
    {
        var said = new List<string>();
        void Add(string what, IFormattable? value)
        {
            if (value is not null) said.Add(PlanningWords.Text("Choice" + what, culture, value));
        }
        if (choice.PupilsAMat is null) Add("Mats", choice.MatCount);
        Add("PupilsAMat", choice.PupilsAMat);
        Add("Performers", choice.PerformersAMat);
        Add("Partners", choice.PartnersATurn);
        Add("Observers", choice.ObserversATurn);
        Add("Action", choice.ActionS);
        Add("InARow", choice.TrialsATurn);
        Add("Rest", choice.RestS);
        Add("Record", choice.RecordS);
        if (choice.RecordedBy is { } by) said.Add(PlanningWords.Text("ChoiceRecordedBy", culture, PlanningWords.Text("Recorded" + by, culture)));
        Add("Sets", choice.SetCount);
        Add("Trials", choice.TrialCount);
        Add("BetweenSets", choice.BetweenSetsS);
        Add("Talk", choice.TalkMin);
        Add("Stations", choice.SideStationCount);
        Add("Change", choice.ChangeS);
        Add("Seed", choice.Seed);
        return said;
    }
}
