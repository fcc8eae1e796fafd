namespace Slantwise.Records.Roster;

/// <summary>The columns of the OneRoster tables that are looked at. Nothing else of a table is read.</summary>
internal enum OneRosterColumn
{
    SourcedId,
    Status,
    Title,
    ClassCode,
    SchoolSourcedId,
    GivenName,
    FamilyName,
    PreferredGivenName,
    ClassSourcedId,
    UserSourcedId,
    Role,
    PropertyName,
    Value,
}
