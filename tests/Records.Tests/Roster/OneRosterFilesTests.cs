using Slantwise.Records.Roster;
using Slantwise.Records.Tests.Checks;

namespace Slantwise.Records.Tests.Roster;

public sealed class OneRosterFilesTests
{
    public static TheoryData<string, string, string, string, int?, string?> Bad => new()
    {
        { "users.csv", "u-1,,", "u-1,gone,", "FieldNotOneOf", 2, "status" },
        { "users.csv", ",William,", ",,", "FieldMissing", 4, "givenName" },
        { "users.csv", "u-2,,", "u-1,,", "IdTwice", 3, "sourcedId" },
        { "users.csv", "givenName", "firstName", "ColumnMissing", null, null },
        { "roles.csv", ",student,", ",pupil,", "FieldNotOneOf", 2, "role" },
        { "roles.csv", "r-1,,,u-1", "r-1,,,u-99", "UserUnknown", 2, "userSourcedId" },
        { "enrollments.csv", "e-1,,,c-1", "e-1,,,c-99", "ClassUnknown", 2, "classSourcedId" },
        { "enrollments.csv", "org-1,u-1,", "org-1,u-99,", "UserUnknown", 2, "userSourcedId" },
        { "enrollments.csv", "u-1,student", "u-1,learner", "FieldNotOneOf", 2, "role" },
        { "enrollments.csv", "e-2,,", "e-1,,", "IdTwice", 3, "sourcedId" },
        { "classes.csv", ",PE,07,co-1,7B", ",,07,co-1,7B", "FieldMissing", 2, "title" },
        { "classes.csv", ",8A,", ",7B,", "ClassNameTwice", 3, null },
        { "manifest.csv", "file.enrollments,bulk", "file.enrollments,delta", "OneRosterDelta", 5, "value" },
        { "manifest.csv", "file.orgs,bulk", "file.orgs,some", "FieldNotOneOf", 6, "value" },
    };

    [Fact]
    public void Read_Set_KeepsStudentsOnly()
    {
        var reading = RosterFiles.Read(RosterSamples.OneRoster());
        Assert.True(reading.IsOneRoster);
        Assert.DoesNotContain(reading.Findings, f => f.IsRefused);
        Assert.Equal(["PE (7B)", "PE (8A)"], reading.Classes.Select(c => c.Name));
        Assert.Equal(
            [("u-1", "Amara K.", false), ("u-2", "Amara L.", false), ("u-3", "Will", false), ("u-4", "Dov", false), ("u-5", "Eli", true), ("u-4", "Dov", true)],
            reading.Rows.Select(r => (r.PupilKey!, r.DisplayName!, r.HasLeft)));
        Assert.Equal(1, (int)Assert.Single(reading.Findings, f => f.Key == "StudentsWithoutClass").Arguments[0]);
    }

    [Fact]
    public void Read_Set_KeepsNothingElseOfUsers()
    {
        var reading = RosterFiles.Read(RosterSamples.OneRoster());
        var kept = string.Join(' ', reading.Rows.Select(r => $"{r} {string.Join(' ', r.OtherLabels)}"));
        Assert.All((string[])["@", "1001", "Kessel", "Lindh", "Tarn", "william.t", "Frida"], secret => Assert.DoesNotContain(secret, kept));
    }

    [Fact]
    public void Read_WithoutRoles_TakesTheRolesOfEnrolments()
    {
        var reading = RosterFiles.Read(RosterSamples.OneRoster().Where(f => !f.Name.EndsWith("roles.csv", StringComparison.Ordinal)).ToList());
        Assert.DoesNotContain(reading.Findings, f => f.IsRefused);
        Assert.DoesNotContain(reading.Rows, r => r is { PupilKey: "u-4", HasLeft: false });
        Assert.Contains(reading.Rows, r => r.PupilKey == "u-1");
    }

    [Fact]
    public void Read_WithoutEnrolments_IsRefused()
    {
        var reading = RosterFiles.Read(RosterSamples.OneRoster().Where(f => !f.Name.EndsWith("enrollments.csv", StringComparison.Ordinal)).ToList());
        Assert.Equal("OneRosterFileMissing", Assert.Single(reading.Findings, f => f.IsRefused).Key);
    }

    [Fact]
    public void Read_OtherVersion_IsFlagged() => Assert.Contains(
        RosterFiles.Read(RosterSamples.OneRoster("manifest.csv", t => t.Replace("oneroster.version,1.2", "oneroster.version,1.1"))).Findings,
        f => f is { IsRefused: false, Key: "OneRosterVersion" });

    [Theory]
    [MemberData(nameof(Bad))]
    public void Read_BadRow_IsNamedWithItsPlace(string table, string from, string to, string key, int? line, string? column)
    {
        var reading = RosterFiles.Read(RosterSamples.OneRoster(table, text =>
        {
            var at = text.IndexOf(from, StringComparison.Ordinal);
            Assert.True(at >= 0, "The sample must hold what is changed.");
            return text[..at] + to + text[(at + from.Length)..];
        }));
        var refused = reading.Findings.First(f => f.IsRefused);
        Assert.Equal((key, "oneroster/" + table, line, column), (refused.Key, refused.InFile!.File, refused.InFile.LineNumber, refused.InFile.Column));
        Sentences.AreWhole(reading.Findings);
    }
}
