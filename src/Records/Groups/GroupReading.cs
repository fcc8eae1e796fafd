using System.Globalization;
using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Records.Groups;

/// <summary>A lesson's groups in sentences: how large, how mixed, and what is not as wished and why. It says nothing about a single pupil but where they are.</summary>
/// <param name="Sizes">How many pupils in how many groups; empty without groups.</param>
/// <param name="Mixing">How mixed or alike in what they have done before; empty where nothing is said of it.</param>
/// <param name="Notes">What is not as wished; empty where all is.</param>
public sealed record GroupReading(string Sizes, string Mixing, IReadOnlyList<GroupNote> Notes)
{
    /// <summary>Reads groups as they stand.</summary>
    /// <param name="roster">Who is grouped; somebody, and not too many (<see cref="GroupRoster.CanBeGrouped"/>).</param>
    /// <param name="plan">The plan.</param>
    /// <param name="culture">The reader's language.</param>
    public static GroupReading Of(GroupRoster roster, GroupPlan plan, CultureInfo culture)
    {
        if (plan.Groups.Count == 0) return new("", "", []);
        var asking = GroupAsking.AsItStands(roster, plan);
        var check = GroupCheck.Of(asking.Request, asking.GroupOf(plan));
        var notes = new List<GroupNote>();
        var outside = roster.Pupils.Where(p => plan.GroupOf(p.Id) is null).Select(p => p.Label).ToList();
        if (outside.Count > 0) notes.Add(new(GroupNoteKind.InNoGroup, GroupSentences.TextCount("InNoGroup", culture, outside.Count, string.Join(", ", outside))));
        if (check.UnmetWishes.Count > 0) notes.AddRange(new UnmetWishes(roster, asking, culture).Notes(check));
        notes.AddRange(check.WrongSizes.Select(g => new GroupNote(GroupNoteKind.UnevenSize, GroupSentences.TextCount(
            "UnevenSize", culture, plan.Groups[g].PupilIds.Count, g + 1, Range(asking.Request.Sizes[g].Least, asking.Request.Sizes[g].Most, culture)))));
        var counts = plan.Groups.Select(g => g.PupilIds.Count).ToList();
        return new(
            GroupSentences.Text(
                "Sizes", culture, GroupSentences.TextCount("Pupils", culture, counts.Sum()), GroupSentences.TextCount("Groups", culture, counts.Count), Range(counts.Min(), counts.Max(), culture)),
            MixingOf(asking.Request, check.BetweenFraction, culture), notes);
    }

    /// <summary>Why no groups were made, in a note; none where some were.</summary>
    /// <param name="making">What was made.</param>
    /// <param name="culture">The reader's language.</param>
    public static GroupNote? WhyNone(GroupMaking making, CultureInfo culture) => making.IsMade ? null : new(
        GroupNoteKind.NoGroups,
        GroupSentences.Text(
            making.Division.Conflicts is [{ IsProved: true, Wishes.Count: 0 }] ? "NoGroups" : "NoGroupsFound", culture,
            GroupSentences.TextCount("Pupils", culture, making.Asking.PupilIds.Count), GroupSentences.TextCount("Groups", culture, making.Asking.Request.Sizes.Count)));

    private static string MixingOf(GroupRequest request, double? betweenFraction, CultureInfo culture)
    {
        var known = request.Pupils.Count(p => p.ExperienceFraction is not null);
        if (known == 0) return request.Goal == GroupGoal.Any ? "" : GroupSentences.Text("MixingUnknown", culture);
        var said = GroupSentences.Text("MixingKnown", culture, known, request.Pupils.Count);
        if (betweenFraction is not { } between) return GroupSentences.Text("MixingSame", culture) + " " + said;
        // Chance alone puts this share of the differences between groups; a working rule where "much as by chance" ends.
        var byChance = known > 1 ? Math.Min(1, (request.Sizes.Count - 1.0) / (known - 1)) : 1;
        var key = between < 0.5 * byChance ? "MixingMixed" : between > 0.5 * (1 + byChance) ? "MixingAlike" : "MixingChance";
        return GroupSentences.Text(key, culture) + " " + said;
    }

    private static string Range(int least, int most, CultureInfo culture) => GroupSentences.Text(least == most ? "RangeOne" : "Range", culture, least, most);
}
