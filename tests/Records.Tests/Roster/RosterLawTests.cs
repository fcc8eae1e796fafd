using CsCheck;
using Slantwise.Records.Roster;
using Slantwise.Records.Tests.Checks;

namespace Slantwise.Records.Tests.Roster;

public sealed class RosterLawTests
{
    private static readonly Gen<string> Names = Gen.OneOf("Ana", "ana", "Ben", "Åsa", "Inés", "Jo", "Li", "Ømer");
    private static readonly Gen<string> Families = Gen.OneOf("García", "Gómez", "López", "de la Rosa", "", "O'Hara", "Garcés");

    private static readonly Gen<string> Rows = Gen.Select(
        Gen.OneOf("7B", "8A", "7b"), Names, Families, Gen.OneOf("", "", "A1", "B2", "C3", "c3"), Gen.OneOf("", "", "1", "2", "3", "4"),
        (c, given, family, code, id) => $"{c},{given},{family},{code},{id}");

    private static readonly Gen<string> Texts = Rows.List[0, 9].Select(rows => "class,first name,last name,code,id\n" + string.Join('\n', rows));

    private static readonly Gen<string> Wild = Gen.OneOf(
        Gen.String,
        Gen.String[Gen.Char["class,name;code\tid\"\r\n 7BÁ\0'="], 0, 120],
        Gen.String[Gen.Char["class,name;code\tid\"\r\n 7BÁ\0'="], 0, 60].Select(s => "class,name,code,id\n" + s));

    [Fact]
    public void Of_AnyFileImportedTwice_TheSecondPlanIsEmpty() =>
        Texts.List[1, 3].Sample(history =>
        {
            var school = new SchoolInMemory();
            foreach (var text in history)
            {
                var plan = school.PlanText(text);
                if (!plan.CanSave)
                {
                    Assert.Empty(plan.Save.Pupils);
                    continue;
                }
                school.Take(plan.Save);
                var again = school.PlanText(text);
                Assert.True(again.CanSave, text);
                Assert.True(again.IsEmpty, text + "\n" + string.Join('\n', again.Added.Concat<object>(again.Changed).Concat(again.Left)));
                Assert.Empty(again.Save.Classes);
                Assert.Empty(again.Save.Pupils);
                Assert.Empty(again.Save.Enrolments);
            }
        });

    [Fact]
    public void Of_AnyImports_CodesAndClassNamesStayUniqueAndNobodyIsLost() =>
        Texts.List[1, 4].Sample(history =>
        {
            var school = new SchoolInMemory();
            var known = new HashSet<Guid>();
            foreach (var text in history)
            {
                school.Take(school.PlanText(text).Save);
                Assert.Equal(school.Pupils.Count, school.Pupils.Select(p => p.Code.ToUpperInvariant()).Distinct().Count());
                Assert.Equal(school.Classes.Count, school.Classes.Select(c => c.Name.ToUpperInvariant()).Distinct().Count());
                Assert.Subset(school.Pupils.Select(p => p.Id).ToHashSet(), known);
                known = school.Pupils.Select(p => p.Id).ToHashSet();
                Assert.All(school.Enrolments, e => Assert.Contains(e.PupilId, known));
            }
        });

    [Fact]
    public void Read_ColumnsInAnyOrder_SayTheSame() =>
        Gen.Select(Rows.List[0, 6], Gen.Int[0, 10_000]).Sample((rows, seed) =>
        {
            var order = Enumerable.Range(0, 5).ToArray();
            new Random(seed).Shuffle(order);
            var lines = rows.Prepend("class,first name,last name,code,id").Select(l => l.Split(',')).ToList();
            var shuffled = string.Join('\n', lines.Select(l => string.Join(';', order.Select(i => l[i]))));
            var one = RosterFiles.Read([new("list.csv", string.Join('\n', lines.Select(l => string.Join(',', l))))]);
            var other = RosterFiles.Read([new("list.csv", shuffled)]);
            Assert.Equal(one.Rows.Select(Said), other.Rows.Select(Said));
            Assert.Equal(one.Findings.Select(f => (f.Key, f.InFile!.LineNumber)), other.Findings.Select(f => (f.Key, f.InFile!.LineNumber)));
        });

    [Fact]
    public void Read_AnyText_NeverThrowsAndSpeaksWholeSentences() =>
        Wild.Sample(text =>
        {
            var plan = new SchoolInMemory().PlanText(text);
            Sentences.AreWhole(plan.Findings);
        });

    [Fact]
    public void Read_AnyBytes_NeverThrows() =>
        Gen.Select(Gen.Byte.Array[0, 200], Gen.OneOf("list.csv", "users.csv", "enrollments.csv")).Sample((bytes, name) =>
        {
            Sentences.AreWhole(RosterFiles.Read([RosterFile.Read(name, bytes)]).Findings);
        });

    [Fact]
    public void Read_OneRosterWithAnyTextPutIn_NeverThrows() =>
        Gen.Select(Gen.OneOf("users.csv", "classes.csv", "enrollments.csv", "roles.csv", "manifest.csv"), Gen.Int[0, 2000], Gen.Int[0, 40], Wild).Sample((table, at, length, text) =>
        {
            var files = RosterSamples.OneRoster(table, t => t[..Math.Min(at, t.Length)] + text + t[Math.Min(at + length, t.Length)..]);
            var plan = new SchoolInMemory().Plan(files);
            Sentences.AreWhole(plan.Findings);
        }, iter: 300);

    private static string Said(RosterRow row) => $"{row.ClassName}|{row.Code}|{row.PupilKey}|{row.DisplayName}|{row.HasLeft}";
}
