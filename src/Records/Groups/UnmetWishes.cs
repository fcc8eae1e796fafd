using System.Globalization;
using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Records.Groups;

/// <summary>Wishes that groups do not meet, each with its reason: what it cannot be met beside, or that groups made anew would meet it.</summary>
internal sealed class UnmetWishes
{
    private readonly GroupRoster _roster;
    private readonly GroupAsking _asking;
    private readonly CultureInfo _culture;
    private readonly GroupDivision _division;

    public UnmetWishes(GroupRoster roster, GroupAsking asking, CultureInfo culture)
    {
        (_roster, _asking, _culture) = (roster, asking, culture);
        // What contradicts what does not hang on the goal, and without one the answer is there sooner.
        _division = GroupDivision.Of(asking.Request with { Goal = GroupGoal.Any });
    }

    public IEnumerable<GroupNote> Notes(GroupCheck check)
    {
        var supporters = check.UnmetWishes.Where(w => _asking.Request.Wishes[w].Kind == GroupWishKind.SupporterIn).ToList();
        foreach (var wish in check.UnmetWishes.Except(supporters))
            yield return new(GroupNoteKind.WishNotMet, $"{Say("NotMet", NameOf(wish))} {WhyOf(wish)}");
        if (supporters.Count == 0) yield break;
        var without = GroupSentences.TextCount("NoSupporter", _culture, supporters.Count, string.Join(", ", supporters.Select(w => _asking.Request.Wishes[w].First + 1)));
        var may = _asking.Request.Pupils.Count(p => p.MaySupport);
        var groups = _asking.Request.Sizes.Count;
        // Too few of them is a reason for all these groups at once, and nearer than any conflict.
        yield return new(GroupNoteKind.NoSupporter, $"{without} {(may < groups ? GroupSentences.TextCount("WhySupporters", _culture, may, groups) : WhyOf(supporters[0]))}");
    }

    private string WhyOf(int wish)
    {
        if (_division.GroupOf is null) return Say("WhySizes");
        if (_division.Conflicts.FirstOrDefault(c => c.Wishes.Contains(wish)) is not { } conflict)
            return Say(_division.UnmetWishes.Contains(wish) ? "WhyCut" : "WhyHand");
        var others = conflict.Wishes.Where(w => w != wish).Select(NameOf).ToList();
        var why = others.Count == 0 ? Say("WhySizes") : Say("WhyOthers", string.Join("; ", others));
        return conflict.IsProved ? why : $"{why} {Say("WhyCut")}";
    }

    private string NameOf(int wish)
    {
        if (wish >= _asking.Wishes.Count) return Say("WishSupporter", _asking.Request.Wishes[wish].First + 1);
        var about = _asking.Wishes[wish];
        return Say(about.IsTogether ? "WishTogether" : "WishApart", _roster.NameOf(about.FirstPupilId), _roster.NameOf(about.SecondPupilId));
    }

    private string Say(string key, params object[] gaps) => GroupSentences.Text(key, _culture, gaps);
}
