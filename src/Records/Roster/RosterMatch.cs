using Slantwise.Records.Checks;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Roster;

/// <summary>Finds which pupils of the school a reading means: by id, then by code, then by name within a class.</summary>
internal sealed class RosterMatch(
    IReadOnlyList<Pupil> pupils,
    IReadOnlyList<Enrolment> enrolments,
    IReadOnlyDictionary<string, SchoolClass> classByName,
    List<Finding> findings)
{
    private readonly Dictionary<Guid, RosterPerson> _claims = [];
    private readonly Dictionary<Guid, Pupil> _byId = pupils.ToDictionary(p => p.Id);
    private readonly ILookup<Guid, Enrolment> _byClass = enrolments.ToLookup(e => e.ClassId);

    /// <summary>What makes rows of a reading one pupil.</summary>
    public static string IdentityOf(RosterRow row) =>
        row.PupilKey is not null ? "id:" + row.PupilKey
        : row.Code is not null ? "code:" + row.Code.ToUpperInvariant()
        : "name:" + Alike.Folded(row.ClassName) + "\n" + Alike.Folded(row.DisplayName);

    public void Find(IReadOnlyList<RosterPerson> people)
    {
        var byKey = pupils.Where(p => p.RosterKey is not null).GroupBy(p => p.RosterKey!).ToDictionary(g => g.Key, g => g.First());
        var byCode = pupils.GroupBy(p => p.Code, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.First(), StringComparer.OrdinalIgnoreCase);
        foreach (var person in people)
        {
            if (person.Key is { } key && byKey.TryGetValue(key, out var pupil)) Claim(person, pupil);
        }
        foreach (var person in Open(people))
        {
            if (person.Code is not { } code || !byCode.TryGetValue(code, out var pupil)) continue;
            if (person.Key is null || pupil.RosterKey is null) Claim(person, pupil);
        }

        // The label as it is goes before what it may have been, so that "Ana" stays Ana when "Ana G." joins.
        foreach (var person in Open(people)) FindByName(person, row => row.DisplayName is null ? [] : [row.DisplayName]);
        FindByOtherLabels(Open(people).ToList());
    }

    private static IEnumerable<RosterPerson> Open(IEnumerable<RosterPerson> people) => people.Where(p => p is { Known: null, IsRefused: false });

    private void Claim(RosterPerson person, Pupil pupil)
    {
        if (_claims.TryAdd(pupil.Id, person)) person.Known = pupil;
        else
        {
            person.IsRefused = true;
            findings.Add(Finding.Refused("PupilMeantTwice", person.Rows[0].Place, pupil.Label, pupil.Code, _claims[pupil.Id].Rows[0].Place));
        }
    }

    private void FindByName(RosterPerson person, Func<RosterRow, IReadOnlyList<string>> labels)
    {
        var candidates = Candidates(person, labels);
        if (candidates.Count == 1) Claim(person, candidates[0]);
        else if (candidates.Count > 1) RefuseAmbiguous(person);
    }

    private void FindByOtherLabels(List<RosterPerson> people)
    {
        // Two newcomers may both have been "Ana": then nothing tells which, and guessing would mix two pupils' evidence.
        var wanted = people.Select(p => (Person: p, Candidates: Candidates(p, row => row.OtherLabels))).Where(w => w.Candidates.Count > 0).ToList();
        var counts = wanted.SelectMany(w => w.Candidates).CountBy(c => c.Id).ToDictionary();
        foreach (var (person, candidates) in wanted)
        {
            if (candidates.Count == 1 && counts[candidates[0].Id] == 1) Claim(person, candidates[0]);
            else RefuseAmbiguous(person);
        }
    }

    private void RefuseAmbiguous(RosterPerson person)
    {
        person.IsRefused = true;
        findings.Add(Finding.Refused("NameAmbiguous", person.Rows[0].Place, person.Rows[0].DisplayName ?? "", person.Rows[0].ClassName));
    }

    // A code in the file is an answer to who it is, so a name is only asked where there is none. An id is new to a pupil added by hand.
    private List<Pupil> Candidates(RosterPerson person, Func<RosterRow, IReadOnlyList<string>> labels)
    {
        if (person.Code is not null) return [];
        var found = new List<(Pupil Pupil, bool IsCurrent)>();
        foreach (var row in person.Rows)
        {
            if (!classByName.TryGetValue(Alike.Folded(row.ClassName), out var schoolClass)) continue;
            var names = labels(row).Select(Alike.Folded).ToHashSet();
            foreach (var enrolment in _byClass[schoolClass.Id])
            {
                if (!_byId.TryGetValue(enrolment.PupilId, out var pupil) || pupil.DisplayName is null || _claims.ContainsKey(pupil.Id)) continue;
                if (person.Key is not null && pupil.RosterKey is not null) continue;
                if (names.Contains(Alike.Folded(pupil.DisplayName))) found.Add((pupil, enrolment.IsCurrent));
            }
        }
        var current = found.Where(f => f.IsCurrent).Select(f => f.Pupil).Distinct().ToList();
        return current.Count > 0 ? current : found.Select(f => f.Pupil).Distinct().ToList();
    }
}
