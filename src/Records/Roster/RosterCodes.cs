using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Roster;

/// <summary>Hands out codes that no pupil of the school has or had before the import, and none that the files bring.</summary>
internal sealed class RosterCodes
{
    private readonly IReadOnlyList<Pupil> _pupils;
    private readonly HashSet<string> _taken = new(StringComparer.OrdinalIgnoreCase);
    private long _number;

    public RosterCodes(IReadOnlyList<Pupil> pupils, IReadOnlyList<RosterPerson> people)
    {
        _pupils = pupils;
        foreach (var pupil in pupils) _taken.Add(pupil.Code);
        foreach (var person in people.Where(p => p.Code is not null)) _taken.Add(person.Code!);
    }

    public string Next()
    {
        string code;
        do code = PupilCode.Of(_number++);
        while (!_taken.Add(code));
        return code;
    }

    /// <summary>Refuses codes that two pupils would have after the import.</summary>
    public void RefuseShared(IReadOnlyList<RosterPerson> people, IReadOnlyList<Pupil> saved, List<Finding> findings)
    {
        var savedIds = saved.Select(p => p.Id).ToHashSet();
        var after = _pupils.Where(p => !savedIds.Contains(p.Id)).Concat(saved).GroupBy(p => p.Code, StringComparer.OrdinalIgnoreCase);
        foreach (var group in after.Where(g => g.Count() > 1))
        {
            var ids = group.Select(p => p.Id).ToHashSet();
            foreach (var person in people.Where(p => p.Planned is { } planned && ids.Contains(planned.Id)))
            {
                findings.Add(Finding.Refused("CodeTaken", person.Rows[0].Place, group.Key));
            }
        }
    }
}
