@echo off
rem Starts Bedwright with the first Java of 21 or newer that it finds: BEDWRIGHT_JAVA (a java.exe, or the folder of a
rem JDK), JAVA_HOME, PATH, then the usual places. BEDWRIGHT_OPTS passes options to Java, as in BEDWRIGHT_OPTS=-Xmx4g.
setlocal EnableExtensions DisableDelayedExpansion
set "NEEDED=21"
set "JAR=%~dp0bedwright.jar"
set "FOUND="
if not exist "%JAR%" (
    echo bedwright: there is no bedwright.jar beside this launcher, in "%~dp0". Unpack the whole archive. 1>&2
    exit /b 70
)
if defined BEDWRIGHT_JAVA (
    if exist "%BEDWRIGHT_JAVA%\bin\java.exe" (call :try "%BEDWRIGHT_JAVA%\bin\java.exe") else (call :try "%BEDWRIGHT_JAVA%")
)
if defined FOUND goto run
if defined BEDWRIGHT_JAVA echo bedwright: BEDWRIGHT_JAVA is "%BEDWRIGHT_JAVA%", which is no Java %NEEDED% or newer; looking elsewhere 1>&2
if defined JAVA_HOME call :try "%JAVA_HOME%\bin\java.exe"
if defined FOUND goto run
for %%J in (java.exe) do if not "%%~$PATH:J"=="" call :try "%%~$PATH:J"
if defined FOUND goto run
for /d %%V in ("%ProgramFiles%\Eclipse Adoptium" "%ProgramFiles%\Java" "%ProgramFiles%\Microsoft" "%ProgramFiles%\OpenJDK" "%ProgramFiles%\Zulu" "%USERPROFILE%\.jdks") do (
    for /d %%D in ("%%~V\*") do if not defined FOUND call :try "%%~D\bin\java.exe"
)
if defined FOUND goto run
echo bedwright: it needs Java %NEEDED% or newer, and there is none in BEDWRIGHT_JAVA, JAVA_HOME, the PATH or the usual 1>&2
echo places. Install a Java runtime of %NEEDED% or newer, or unpack one anywhere and name its folder: 1>&2
echo   set BEDWRIGHT_JAVA=C:\folder\of\the\jdk 1>&2
exit /b 70

:run
rem What is written is UTF-8; the window is given back as it was.
set "LETTERS="
for /f "tokens=2 delims=:." %%L in ('chcp') do set "LETTERS=%%L"
if defined LETTERS chcp 65001 >nul
rem What answers within seconds is done before the slower compiler has paid for itself.
set "COMPILER="
for %%C in (why week sofar check expect crops buying tags calendar tables schema note storm eaten new) do if /i "%~1"=="%%C" set "COMPILER=-XX:TieredStopAtLevel=1 -Djdk.reflect.useNativeAccessorOnly=true"
rem The plain collector makes the search a fifth faster; what the virtual machine says must not mix with results.
"%FOUND%" -XX:+UseSerialGC %COMPILER% -Xlog:disable -Xlog:all=error:stderr %BEDWRIGHT_OPTS% -jar "%JAR%" %*
set "CODE=%ERRORLEVEL%"
if defined LETTERS chcp %LETTERS% >nul
exit /b %CODE%

rem Takes the java that is named if it is new enough.
:try
if defined FOUND exit /b 0
if not exist "%~1" exit /b 0
set "VERSION="
rem The outer quotation marks are for the shell that reads this command, which takes them off; as ^" they open nothing here.
for /f "tokens=2 delims==" %%L in ('^""%~1" -XshowSettings:properties -version 2^>^&1 ^| findstr java.specification.version^"') do set "VERSION=%%L"
if not defined VERSION exit /b 0
set "VERSION=%VERSION: =%"
for /f "tokens=1 delims=." %%L in ("%VERSION%") do if %%L GEQ %NEEDED% set "FOUND=%~1"
exit /b 0
