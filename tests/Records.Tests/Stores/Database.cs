namespace Slantwise.Records.Tests.Stores;

/// <summary>The databases every storage test runs on.</summary>
public enum Database
{
    Sqlite,
    Postgres,
}
