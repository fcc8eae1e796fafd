using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Records.Roster;

/// <summary>Reads the OneRoster 1.2 CSV set: who is a student in which class, and nothing more.</summary>
/// <remarks>
/// Of <c>users.csv</c> only the id, the status and the names are read; e-mail addresses, birth dates and other identifiers never leave the text.
/// Source: [OneRoster2022] tables of the CSV binding, names of files and columns. The enumerations and the values of the manifest are from memory.
/// </remarks>
internal static class OneRosterFiles
{
    private static readonly Dictionary<string, OneRosterColumn> Aliases =
        Enum.GetValues<OneRosterColumn>().ToDictionary(c => c.ToString().ToLowerInvariant());

    private static readonly string[] Statuses = ["active", "tobedeleted"];

    private static readonly string[] EnrolmentRoles = ["student", "teacher", "administrator", "proctor"];

    private static readonly string[] UserRoles =
    [
        "student", "aide", "counselor", "districtAdministrator", "guardian", "parent", "principal", "proctor",
        "relative", "siteAdministrator", "systemAdministrator", "teacher",
    ];

    private static readonly string[] NeededTables = ["users.csv", "classes.csv", "enrollments.csv"];

    private static readonly string[] BulkOrDelta = ["absent", "bulk", "delta"];

    /// <summary>Whether a table is one of the set: its file has the name and its heading the id.</summary>
    public static bool IsPartOfSet(CsvTable table) =>
        NeededTables.Append("roles.csv").Contains(NameOf(table)) && table.Headings.Any(h => CsvColumns<OneRosterColumn>.Folded(h) == "sourcedid");

    public static RosterReading Read(IReadOnlyList<CsvTable> files, List<Finding> findings)
    {
        var tables = new Dictionary<string, CsvTable>();
        foreach (var file in files)
        {
            if (!tables.TryAdd(NameOf(file), file)) findings.Add(Finding.Refused("FileTwice", file.Place));
        }
        foreach (var missing in NeededTables.Where(n => !tables.ContainsKey(n))) findings.Add(Finding.Refused("OneRosterFileMissing", missing));
        var set = new OneRosterSet();
        if (tables.TryGetValue("manifest.csv", out var manifest)) ReadManifest(manifest, findings);
        if (tables.TryGetValue("classes.csv", out var classes)) ReadClasses(classes, set, findings);
        if (tables.TryGetValue("users.csv", out var users)) ReadUsers(users, set, findings);
        if (tables.TryGetValue("roles.csv", out var roles)) ReadRoles(roles, set, findings);
        if (tables.TryGetValue("enrollments.csv", out var enrolments)) ReadEnrolments(enrolments, set, findings);
        var readable = NeededTables.Concat(["roles.csv", "manifest.csv"]);
        foreach (var other in tables.Where(t => !readable.Contains(t.Key)).Select(t => t.Value)) findings.Add(Finding.Flagged("FileNotUsed", other.Place));

        // A student who is in no class would show up nowhere; a teacher's file tells of many more people than those taught.
        var enrolled = set.Drafts.Select(d => d.PupilKey).ToHashSet();
        var without = set.Students.Count(s => !enrolled.Contains(s) && set.Users.TryGetValue(s, out var user) && !user.IsDeleted);
        if (without > 0) findings.Add(Finding.Flagged("StudentsWithoutClass", without));
        return RosterDrafts.Finish(set.Drafts, set.Classes.Values.ToList(), isOneRoster: true, findings);
    }

    private static void ReadManifest(CsvTable table, List<Finding> findings)
    {
        if (Columns(table, findings, OneRosterColumn.PropertyName, OneRosterColumn.Value) is not { } columns) return;
        foreach (var row in table.Rows)
        {
            var property = row[columns[OneRosterColumn.PropertyName]];
            var value = row[columns[OneRosterColumn.Value]];
            var place = row.At(columns[OneRosterColumn.Value]);
            if (property == "oneroster.version" && value is not ("1.2" or "1.2.0")) findings.Add(Finding.Flagged("OneRosterVersion", place, TextCheck.Visible(value)));
            if (!property.StartsWith("file.", StringComparison.Ordinal)) continue;
            if (!BulkOrDelta.Contains(value)) findings.Add(Finding.Refused("FieldNotOneOf", place, TextCheck.Visible(value), string.Join(", ", BulkOrDelta)));

            // A delta names only what changed, so that who is missing from it has not left.
            else if (value == "delta" && property is "file.users" or "file.classes" or "file.enrollments" or "file.roles") findings.Add(Finding.Refused("OneRosterDelta", place));
        }
    }

    private static void ReadClasses(CsvTable table, OneRosterSet set, List<Finding> findings)
    {
        if (Columns(table, findings, OneRosterColumn.SourcedId, OneRosterColumn.Title) is not { } columns) return;
        var read = new List<(RosterClass Class, string? Code)>();
        foreach (var row in table.Rows)
        {
            var fields = new RosterFieldReader(row, findings);
            var key = fields.Required(columns[OneRosterColumn.SourcedId], Limits.RosterKeyLength);
            var title = fields.Required(columns[OneRosterColumn.Title], Limits.ClassNameLength);
            var isClosed = fields.OneOf(columns[OneRosterColumn.Status], Statuses, mayBeEmpty: true) == "tobedeleted";
            var code = fields.Optional(columns[OneRosterColumn.ClassCode], Limits.ClassNameLength);
            if (row[columns[OneRosterColumn.SchoolSourcedId]] is { Length: > 0 } school) set.SchoolKeys.Add(school);
            if (fields.HasRefused) set.RefusedClassKeys.Add(key);
            else if (read.FirstOrDefault(r => r.Class.Key == key).Class is { } first) findings.Add(Finding.Refused("IdTwice", row.At(columns[OneRosterColumn.SourcedId]), key, first.Place));
            else read.Add((new RosterClass(row.Place, title, key, isClosed), code));
        }
        if (set.SchoolKeys.Count > 1) findings.Add(Finding.Flagged("OneRosterSeveralSchools", table.Place, set.SchoolKeys.Count));
        AddNamed(read, set, findings);
    }

    // Many schools title every group "PE": where titles are alike the class code tells them apart.
    private static void AddNamed(List<(RosterClass Class, string? Code)> read, OneRosterSet set, List<Finding> findings)
    {
        var titles = read.ToLookup(r => Alike.Folded(r.Class.Name));
        var names = new Dictionary<string, RosterClass>();
        foreach (var (given, code) in read)
        {
            var named = titles[Alike.Folded(given.Name)].Count() > 1 && code is not null ? given with { Name = $"{given.Name} ({code})" } : given;
            if (named.Name.Length > Limits.ClassNameLength)
            {
                findings.Add(Finding.Refused("FieldTooLong", named.Place, Limits.ClassNameLength, named.Name.Length));
                set.RefusedClassKeys.Add(named.Key!);
            }
            else if (names.TryAdd(Alike.Folded(named.Name), named)) set.Classes.Add(named.Key!, named);
            else
            {
                findings.Add(Finding.Refused("ClassNameTwice", named.Place, named.Name, names[Alike.Folded(named.Name)].Place));
                set.RefusedClassKeys.Add(named.Key!);
            }
        }
    }

    private static void ReadUsers(CsvTable table, OneRosterSet set, List<Finding> findings)
    {
        if (Columns(table, findings, OneRosterColumn.SourcedId, OneRosterColumn.GivenName, OneRosterColumn.FamilyName) is not { } columns) return;
        foreach (var row in table.Rows)
        {
            var fields = new RosterFieldReader(row, findings);
            var key = fields.Required(columns[OneRosterColumn.SourcedId], Limits.RosterKeyLength);
            var isDeleted = fields.OneOf(columns[OneRosterColumn.Status], Statuses, mayBeEmpty: true) == "tobedeleted";
            var given = fields.Required(columns[OneRosterColumn.GivenName], Limits.DisplayNameLength);
            var preferred = fields.Optional(columns[OneRosterColumn.PreferredGivenName], Limits.DisplayNameLength);
            var family = fields.Optional(columns[OneRosterColumn.FamilyName], Limits.DisplayNameLength);
            if (fields.HasRefused) set.RefusedUserKeys.Add(key);
            else if (!set.Users.TryAdd(key, new(row.Place, preferred ?? given, family, isDeleted)))
            {
                findings.Add(Finding.Refused("IdTwice", row.At(columns[OneRosterColumn.SourcedId]), key, set.Users[key].Place));
            }
        }
    }

    private static void ReadRoles(CsvTable table, OneRosterSet set, List<Finding> findings)
    {
        if (Columns(table, findings, OneRosterColumn.UserSourcedId, OneRosterColumn.Role) is not { } columns) return;
        foreach (var row in table.Rows)
        {
            var fields = new RosterFieldReader(row, findings);
            var user = fields.Required(columns[OneRosterColumn.UserSourcedId], Limits.RosterKeyLength);
            var status = fields.OneOf(columns[OneRosterColumn.Status], Statuses, mayBeEmpty: true);
            var isExtended = row[columns[OneRosterColumn.Role]].StartsWith("ext:", StringComparison.Ordinal);
            var role = isExtended ? null : fields.OneOf(columns[OneRosterColumn.Role], UserRoles, mayBeEmpty: false);
            if (user.Length > 0 && !set.Users.ContainsKey(user) && !set.RefusedUserKeys.Contains(user))
            {
                fields.Refuse("UserUnknown", row.At(columns[OneRosterColumn.UserSourcedId]), user);
            }
            if (!fields.HasRefused && role == "student" && status == "active") set.Students.Add(user);
        }
    }

    private static void ReadEnrolments(CsvTable table, OneRosterSet set, List<Finding> findings)
    {
        if (Columns(table, findings, OneRosterColumn.SourcedId, OneRosterColumn.ClassSourcedId, OneRosterColumn.UserSourcedId) is not { } columns) return;
        var ids = new Dictionary<string, FilePlace>();
        foreach (var row in table.Rows)
        {
            var fields = new RosterFieldReader(row, findings);
            var id = fields.Required(columns[OneRosterColumn.SourcedId], Limits.RosterKeyLength);
            var classKey = fields.Required(columns[OneRosterColumn.ClassSourcedId], Limits.RosterKeyLength);
            var userKey = fields.Required(columns[OneRosterColumn.UserSourcedId], Limits.RosterKeyLength);
            var status = fields.OneOf(columns[OneRosterColumn.Status], Statuses, mayBeEmpty: true);
            var hasRole = row[columns[OneRosterColumn.Role]].Length > 0;
            var role = hasRole ? fields.OneOf(columns[OneRosterColumn.Role], EnrolmentRoles, mayBeEmpty: false) : null;
            if (id.Length > 0 && !ids.TryAdd(id, row.Place)) fields.Refuse("IdTwice", row.At(columns[OneRosterColumn.SourcedId]), id, ids[id]);
            if (classKey.Length > 0 && !set.Classes.ContainsKey(classKey) && !set.RefusedClassKeys.Contains(classKey))
            {
                fields.Refuse("ClassUnknown", row.At(columns[OneRosterColumn.ClassSourcedId]), classKey);
            }
            if (userKey.Length > 0 && !set.Users.ContainsKey(userKey) && !set.RefusedUserKeys.Contains(userKey))
            {
                fields.Refuse("UserUnknown", row.At(columns[OneRosterColumn.UserSourcedId]), userKey);
            }
            if (fields.HasRefused || !(role == "student" || (role is null && set.Students.Contains(userKey)))) continue;
            if (!set.Classes.TryGetValue(classKey, out var ofClass) || !set.Users.TryGetValue(userKey, out var user)) continue;
            set.Drafts.Add(new RosterDraft
            {
                Place = row.Place,
                ClassName = ofClass.Name,
                PupilKey = userKey,
                GivenName = user.GivenName,
                FamilyName = user.FamilyName,
                HasLeft = status == "tobedeleted" || user.IsDeleted || ofClass.IsClosed,
            });
        }
    }

    private static CsvColumns<OneRosterColumn>? Columns(CsvTable table, List<Finding> findings, params ReadOnlySpan<OneRosterColumn> needed)
    {
        findings.AddRange(table.Findings);
        if (table.Headings.Count == 0) return null;
        var columns = CsvColumns<OneRosterColumn>.Of(table, Aliases, findings);
        var isComplete = true;
        foreach (var column in needed)
        {
            if (columns.Has(column)) continue;
            findings.Add(Finding.Refused("ColumnMissing", table.Place, char.ToLowerInvariant(column.ToString()[0]) + column.ToString()[1..]));
            isComplete = false;
        }
        return isComplete ? columns : null;
    }

    private static string NameOf(CsvTable table) => table.Name.Split('/', '\\')[^1].ToLowerInvariant();
}
