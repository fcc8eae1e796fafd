using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Roster;

/// <summary>Builds one plan: classes, then pupils, then who is where.</summary>
internal sealed class RosterPlanner(
    RosterReading reading,
    Guid schoolId,
    IReadOnlyList<SchoolClass> classes,
    IReadOnlyList<Pupil> pupils,
    IReadOnlyList<Enrolment> enrolments,
    TimeProvider clock)
{
    private readonly List<RosterAddition> _added = [];
    private readonly List<RosterChange> _changed = [];
    private readonly List<RosterLeaving> _left = [];
    private readonly List<Finding> _findings = [.. reading.Findings];
    private readonly List<SchoolClass> _saveClasses = [];
    private readonly List<Pupil> _savePupils = [];
    private readonly List<Enrolment> _saveEnrolments = [];
    private readonly Dictionary<string, SchoolClass> _classByName = [];
    private readonly Dictionary<(Guid Class, Guid Pupil), Enrolment> _enrolmentByPair = enrolments.ToDictionary(e => (e.ClassId, e.PupilId));
    private int _sameCount;

    public RosterPlan Plan()
    {
        foreach (var given in reading.Classes) PlanClass(given);
        RefuseSharedClassNames();
        PlanPupils();
        var canSave = !_findings.Any(f => f.IsRefused);
        return new RosterPlan
        {
            Added = _added,
            Changed = _changed,
            Left = canSave ? _left : [],
            SameCount = _sameCount,
            Findings = _findings,
            Save = canSave ? new RosterSave { Classes = _saveClasses, Pupils = _savePupils, Enrolments = _saveEnrolments } : new RosterSave(),
        };
    }

    private void PlanClass(RosterClass given)
    {
        var known = given.Key is null ? null : classes.FirstOrDefault(c => c.RosterKey == given.Key);
        if (known is null && classes.FirstOrDefault(c => Alike.Texts(c.Name, given.Name)) is { } namesake)
        {
            // A class made by hand takes the id of the files; one with another id is another class.
            if (given.Key is null || namesake.RosterKey is null) known = namesake;
            else _findings.Add(Finding.Refused("ClassNameTaken", given.Place, given.Name));
        }
        if (given.IsClosed) _findings.Add(Finding.Flagged("ClassClosed", given.Place, given.Name));
        if (known is null)
        {
            if (given.IsClosed) return;
            var added = new SchoolClass { SchoolId = schoolId, Id = EntryId.New(clock), Name = given.Name, RosterKey = given.Key };
            _saveClasses.Add(added);
            _classByName[Alike.Folded(given.Name)] = added;
            _added.Add(new RosterAddition(RosterItemKind.Class, given.Name, null, given.Name));
            return;
        }
        _classByName[Alike.Folded(given.Name)] = known;
        var changed = known;
        if (given.Key is not null && known.RosterKey is null)
        {
            changed = changed with { RosterKey = given.Key };
            _changed.Add(new RosterChange(RosterItemKind.Class, known.Name, RosterField.RosterKey, null, given.Key));
        }

        // Where the name itself is what a class is known by, its spelling stays the teacher's.
        if (given.Key is not null && known.Name != given.Name)
        {
            changed = changed with { Name = given.Name };
            _changed.Add(new RosterChange(RosterItemKind.Class, known.Name, RosterField.Name, known.Name, given.Name));
        }
        if (changed != known) _saveClasses.Add(changed);
    }

    private void RefuseSharedClassNames()
    {
        var saved = _saveClasses.ToDictionary(c => c.Id);
        var after = classes.Where(c => !saved.ContainsKey(c.Id)).Concat(_saveClasses).GroupBy(c => Alike.Folded(c.Name));
        foreach (var group in after.Where(g => g.Count() > 1 && g.Any(c => saved.ContainsKey(c.Id))))
        {
            var place = reading.Classes.FirstOrDefault(c => Alike.Folded(c.Name) == group.Key)?.Place;
            if (place is not null && !_findings.Any(f => f.Key == "ClassNameTaken" && f.InFile == place))
            {
                _findings.Add(Finding.Refused("ClassNameTaken", place, group.First().Name));
            }
        }
    }

    private void PlanPupils()
    {
        var people = reading.Rows.GroupBy(RosterMatch.IdentityOf).Select(g => new RosterPerson(g.Key, g.ToList())).ToList();
        var match = new RosterMatch(pupils, enrolments, _classByName, _findings);
        match.Find(people);
        var codes = new RosterCodes(pupils, people);
        foreach (var person in people.Where(p => !p.IsRefused)) PlanPerson(person, codes);
        codes.RefuseShared(people, _savePupils, _findings);
        PlanLeaving(people);
    }

    private void PlanPerson(RosterPerson person, RosterCodes codes)
    {
        var known = person.Known;
        if (known is null && !person.IsHere) return;
        var pupil = known ?? new Pupil
        {
            SchoolId = schoolId,
            Id = EntryId.New(clock),
            Code = person.Code ?? codes.Next(),
            DisplayName = person.DisplayName,
            RosterKey = person.Key,
        };
        if (known is not null && person.IsHere) pupil = Changed(known, person);
        person.Planned = pupil;
        if (pupil != known) _savePupils.Add(pupil);
        PlanMemberships(person, pupil, known);
    }

    private Pupil Changed(Pupil known, RosterPerson person)
    {
        var pupil = known;
        if (person.DisplayName is { } name && name != known.DisplayName)
        {
            pupil = pupil with { DisplayName = name };
            _changed.Add(new RosterChange(RosterItemKind.Pupil, known.Label, RosterField.Name, known.DisplayName, name));
        }
        if (person.Code is { } code && code != known.Code)
        {
            pupil = pupil with { Code = code };
            _changed.Add(new RosterChange(RosterItemKind.Pupil, known.Label, RosterField.Code, known.Code, code));
        }
        if (person.Key is { } key && key != known.RosterKey)
        {
            pupil = pupil with { RosterKey = key };
            _changed.Add(new RosterChange(RosterItemKind.Pupil, known.Label, RosterField.RosterKey, known.RosterKey, key));
        }
        return pupil;
    }

    private void PlanMemberships(RosterPerson person, Pupil pupil, Pupil? known)
    {
        var isFirst = known is null;
        foreach (var row in person.Rows.Where(r => !r.HasLeft))
        {
            if (!_classByName.TryGetValue(Alike.Folded(row.ClassName), out var schoolClass)) continue;
            if (_enrolmentByPair.TryGetValue((schoolClass.Id, pupil.Id), out var enrolment) && enrolment.IsCurrent)
            {
                if (pupil == known) _sameCount++;
                continue;
            }
            _saveEnrolments.Add(new Enrolment { SchoolId = schoolId, ClassId = schoolClass.Id, PupilId = pupil.Id });
            _added.Add(new RosterAddition(isFirst ? RosterItemKind.Pupil : RosterItemKind.Membership, pupil.Label, pupil.Code, schoolClass.Name));
            isFirst = false;
        }
    }

    private void PlanLeaving(List<RosterPerson> people)
    {
        var here = people
            .Where(p => p.Planned is not null)
            .SelectMany(p => p.Rows.Where(r => !r.HasLeft), (p, r) => (Class: Alike.Folded(r.ClassName), Pupil: p.Planned!.Id))
            .ToHashSet();
        var byId = pupils.ToDictionary(p => p.Id);
        foreach (var given in reading.Classes)
        {
            var name = Alike.Folded(given.Name);
            if (!_classByName.TryGetValue(name, out var schoolClass)) continue;
            var current = enrolments.Where(e => e.ClassId == schoolClass.Id && e.IsCurrent && byId.ContainsKey(e.PupilId)).ToList();
            var leaving = current.Where(e => !here.Contains((name, e.PupilId))).ToList();
            foreach (var enrolment in leaving)
            {
                var pupil = byId[enrolment.PupilId];
                _saveEnrolments.Add(enrolment with { IsCurrent = false });
                _left.Add(new RosterLeaving(pupil.Label, pupil.Code, schoolClass.Name));
            }

            // A file of another class, or one cut short, looks like this.
            if (!given.IsClosed && leaving.Count > 1 && leaving.Count * 2 > current.Count && !_findings.Any(f => f.IsRefused))
            {
                _findings.Add(Finding.Flagged("ManyLeave", given.Place, schoolClass.Name, leaving.Count, current.Count));
            }
        }
    }
}
