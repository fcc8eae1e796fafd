using Slantwise.Records.Safety;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Safety;

public sealed class RestrictionOutlookTests
{
    private static readonly DateOnly Today = new(2027, 3, 8);
    private static readonly SchoolClass[] Classes = [ClassOf(1, "7 Heron"), ClassOf(2, "7 Kestrel")];

    // Pupils 1, 2 and 3 are in the first class, 4 in the second, 5 was in the first and left.
    private static readonly Enrolment[] Enrolments = [Member(1, 1), Member(1, 2), Member(1, 3), Member(2, 4), Member(1, 5) with { IsCurrent = false }];

    [Fact]
    public void Of_Today_CountsPupilsNotRestrictions()
    {
        var outlook = Of(With(1), With(1), With(2, until: -1), With(3, since: 1), With(5), With(4, until: 0));
        Assert.Equal([(3, 1), (1, 1)], outlook.Classes.Select(c => (c.PupilCount, c.RestrictedCount)));
    }

    [Fact]
    public void Of_AheadOfUs_SaysWhatBeginsEndsAndMayBeLifted()
    {
        var outlook = Of(With(1, until: 0), With(2, until: 14), With(3, until: 15), With(2, since: 3), With(3, since: 3), With(4, until: 5, byHand: true), With(4, since: 0), With(5, until: 2));
        Assert.Equal(
            [
                (0, RestrictionChangeKind.LastDay, "7 Heron", 1), (3, RestrictionChangeKind.Begins, "7 Heron", 2), (5, RestrictionChangeKind.MayBeLifted, "7 Kestrel", 1),
                (14, RestrictionChangeKind.LastDay, "7 Heron", 1),
            ],
            outlook.Changes.Select(c => (c.Day.DayNumber - Today.DayNumber, c.Kind, c.Class.Name, c.PupilCount)));
    }

    [Fact]
    public void Of_GateThatNobodyLifted_StaysInSight()
    {
        var change = Assert.Single(Of(With(1, until: -20, byHand: true), With(2, until: -20)).Changes);
        Assert.Equal((Today.AddDays(-20), RestrictionChangeKind.MayBeLifted), (change.Day, change.Kind));
    }

    [Fact]
    public void Of_DaysBehind_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => RestrictionOutlook.Of([], [], [], Today, -1));

    private static RestrictionOutlook Of(params Restriction[] restrictions) => RestrictionOutlook.Of(Classes, Enrolments, restrictions, Today, 14);

    private static Restriction With(int pupil, int? since = null, int? until = null, bool byHand = false) => new()
    {
        SchoolId = Guid.Empty, Id = Guid.CreateVersion7(), PupilId = Id(pupil), Without = BodyDemand.Inversion,
        Since = since is { } s ? Today.AddDays(s) : null, Until = until is { } u ? Today.AddDays(u) : null, IsLiftedByHand = byHand,
    };

    private static SchoolClass ClassOf(int number, string name) => new() { SchoolId = Guid.Empty, Id = Id(number), Name = name };

    private static Enrolment Member(int ofClass, int pupil) => new() { SchoolId = Guid.Empty, ClassId = Id(ofClass), PupilId = Id(pupil) };

    private static Guid Id(int number) => new(number, 0, 0, new byte[8]);
}
