using Slantwise.Records.Checks;

namespace Slantwise.Records.Roster;

/// <summary>Turns what files say into rows: repeats and contradictions found, labels made, names no longer needed dropped.</summary>
internal static class RosterDrafts
{
    public static RosterReading Finish(IReadOnlyList<RosterDraft> drafts, IReadOnlyList<RosterClass> classes, bool isOneRoster, List<Finding> findings)
    {
        var kept = WithoutContradictions(WithoutRepeats(drafts, findings), findings);
        var letters = LettersByPupil(kept);
        var rows = kept.Select(d => RowOf(d, letters.GetValueOrDefault(d.Identity))).ToList();
        FlagSharedLabels(rows, findings);
        return new RosterReading
        {
            IsOneRoster = isOneRoster,
            Classes = isOneRoster ? classes : kept.DistinctBy(d => Alike.Folded(d.ClassName)).Select(d => new RosterClass(d.Place, d.ClassName)).ToList(),
            Rows = rows,
            Findings = findings,
        };
    }

    private static List<RosterDraft> WithoutRepeats(IReadOnlyList<RosterDraft> drafts, List<Finding> findings)
    {
        var seen = new Dictionary<(string Class, string Identity), RosterDraft>();
        var kept = new List<RosterDraft>();
        foreach (var draft in drafts)
        {
            var slot = (Alike.Folded(draft.ClassName), draft.Identity);
            if (seen.TryAdd(slot, draft)) kept.Add(draft);
            else if (draft is { PupilKey: null, Code: null }) findings.Add(Finding.Refused("NameTwiceInClass", draft.Place, draft.Name ?? draft.GivenName ?? "", seen[slot].Place));
            else if (SameNames(draft, seen[slot])) findings.Add(Finding.Flagged("RowTwice", draft.Place, seen[slot].Place));
            else findings.Add(Finding.Refused("PupilNamedTwice", draft.Place, draft.PupilKey ?? draft.Code!, seen[slot].Place));
        }
        return kept;
    }

    // One pupil in several classes must be one pupil: the same code and name wherever the id stands, and no code under two ids.
    private static List<RosterDraft> WithoutContradictions(List<RosterDraft> drafts, List<Finding> findings)
    {
        var byIdentity = new Dictionary<string, RosterDraft>();
        var byCode = new Dictionary<string, RosterDraft>(StringComparer.OrdinalIgnoreCase);
        var kept = new List<RosterDraft>();
        foreach (var draft in drafts)
        {
            if (byIdentity.TryGetValue(draft.Identity, out var same) && !SameNames(draft, same))
            {
                findings.Add(Finding.Refused("PupilNamedTwice", draft.Place, draft.PupilKey ?? draft.Code ?? "", same.Place));
            }
            else if (draft.Code is { } code && byCode.TryGetValue(code, out var other) && other.Identity != draft.Identity)
            {
                findings.Add(Finding.Refused("CodeTwice", draft.Place, code, other.Place));
            }
            else
            {
                byIdentity.TryAdd(draft.Identity, draft);
                if (draft.Code is not null) byCode.TryAdd(draft.Code, draft);
                kept.Add(draft);
            }
        }
        return kept;
    }

    private static bool SameNames(RosterDraft one, RosterDraft other) =>
        (one.Name, one.GivenName, one.FamilyName) == (other.Name, other.GivenName, other.FamilyName)
        && string.Equals(one.Code, other.Code, StringComparison.OrdinalIgnoreCase);

    // A pupil of several classes has one label, so it takes the most letters that any of the classes asks for.
    private static Dictionary<string, int> LettersByPupil(List<RosterDraft> kept)
    {
        var letters = new Dictionary<string, int>();
        var shared = kept
            .Where(d => d is { Name: null, GivenName: not null, HasLeft: false })
            .GroupBy(d => (Alike.Folded(d.ClassName), Alike.Folded(d.GivenName)));
        foreach (var group in shared)
        {
            foreach (var (identity, count) in PupilLabels.LettersFor(group.ToDictionary(d => d.Identity, d => d.FamilyName ?? "")))
            {
                letters[identity] = Math.Max(letters.GetValueOrDefault(identity), count);
            }
        }
        return letters;
    }

    private static RosterRow RowOf(RosterDraft draft, int letters)
    {
        var label = draft.Name ?? (draft.GivenName is null ? null : PupilLabels.Of(draft.GivenName, draft.FamilyName, letters));
        return new RosterRow
        {
            Place = draft.Place,
            ClassName = draft.ClassName,
            PupilKey = draft.PupilKey,
            Code = draft.Code,
            DisplayName = label is { Length: > Limits.DisplayNameLength } ? draft.GivenName : label,
            OtherLabels = draft is { Name: null, GivenName: { } given }
                ? PupilLabels.All(given, draft.FamilyName).Where(l => l != label).ToList()
                : [],
            HasLeft = draft.HasLeft,
        };
    }

    private static void FlagSharedLabels(List<RosterRow> rows, List<Finding> findings)
    {
        var shared = rows.Where(r => r is { HasLeft: false, DisplayName: not null }).GroupBy(r => (Alike.Folded(r.ClassName), Alike.Folded(r.DisplayName)));
        foreach (var group in shared.Where(g => g.Count() > 1))
        {
            var first = group.First();
            var unmarked = group.Where(r => r is { PupilKey: null, Code: null }).ToList();
            foreach (var again in unmarked.Skip(1)) findings.Add(Finding.Refused("NameTwiceInClass", again.Place, again.DisplayName!, unmarked[0].Place));
            if (unmarked.Count < 2) findings.Add(Finding.Flagged("LabelShared", group.ElementAt(1).Place, first.DisplayName!, first.ClassName, group.Count()));
        }
    }
}
