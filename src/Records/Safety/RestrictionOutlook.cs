using Slantwise.Records.Schools;

namespace Slantwise.Records.Safety;

/// <summary>Who is restricted today, class by class, and what changes soon. Counts only: names and what is ruled out are on the class's page.</summary>
/// <param name="Classes">Every class, in the order given.</param>
/// <param name="Changes">The earliest first. What could have been lifted before today and was not stands at its own, earlier day.</param>
public sealed record RestrictionOutlook(IReadOnlyList<ClassRestrictions> Classes, IReadOnlyList<RestrictionChange> Changes)
{
    /// <summary>Looks ahead.</summary>
    /// <param name="classes">The school's classes.</param>
    /// <param name="enrolments">Who belongs to which class.</param>
    /// <param name="restrictions">All restrictions.</param>
    /// <param name="today">The day to stand on.</param>
    /// <param name="aheadDays">How many days to look ahead, today not counted; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 0 days ahead.</exception>
    public static RestrictionOutlook Of(
        IReadOnlyList<SchoolClass> classes, IReadOnlyList<Enrolment> enrolments, IReadOnlyList<Restriction> restrictions, DateOnly today, int aheadDays)
    {
        if (aheadDays < 0) throw new ArgumentOutOfRangeException(nameof(aheadDays), aheadDays, "Days ahead are 0 or more.");
        var members = enrolments.Where(e => e.IsCurrent).ToLookup(e => e.ClassId, e => e.PupilId);
        var last = today.AddDays(aheadDays);
        return new(
            [.. classes.Select(c => new ClassRestrictions(
                c,
                members[c.Id].Distinct().Count(),
                restrictions.Where(r => r.HoldsOn(today)).Select(r => r.PupilId).Intersect(members[c.Id]).Count()))],
            [.. from one in classes
                from change in restrictions.Where(r => members[one.Id].Contains(r.PupilId)).SelectMany(r => ChangesOf(r, today, last).Select(c => (c.Day, c.Kind, r.PupilId)))
                group change.PupilId by (change.Day, change.Kind, Class: one) into same
                orderby same.Key.Day, same.Key.Kind, same.Key.Class.Name
                select new RestrictionChange(same.Key.Day, same.Key.Kind, same.Key.Class, same.Distinct().Count())]);
    }

    private static IEnumerable<(DateOnly Day, RestrictionChangeKind Kind)> ChangesOf(Restriction restriction, DateOnly today, DateOnly last)
    {
        if (restriction.Since is { } since && since > today && since <= last) yield return (since, RestrictionChangeKind.Begins);
        if (restriction.Until is not { } until || until > last) yield break;
        if (restriction.IsLiftedByHand) yield return (until, RestrictionChangeKind.MayBeLifted);
        else if (until >= today) yield return (until, RestrictionChangeKind.LastDay);
    }
}
