namespace Slantwise.Records.Roster;

/// <summary>The columns a plain roster may have.</summary>
internal enum PlainColumn
{
    Class,
    Code,
    Name,
    GivenName,
    FamilyName,
    Key,

    /// <summary>Spanish <c>nombre</c>: the given name beside a column of family names, the whole name without one.</summary>
    NameOrGivenName,
}
