@echo off
rem Starts the command line without a display and without a workspace; what the platform caches goes into a folder that is removed at the end.
rem The platform keeps words such as -data or -application for itself wherever they stand, so each word of the user goes through marked.
rem Runs are short, so the quick compiler is the better one and starts early;
rem for a very large shop: set CRADLEWRIGHT_JAVA_OPTIONS=-XX:TieredStopAtLevel=4
setlocal EnableExtensions DisableDelayedExpansion
rem The dot keeps the path from ending in a backslash, which would swallow the quotation mark behind it.
set "here=%~dp0."
set "cache=%TEMP%\cradlewright.%RANDOM%%RANDOM%"
rem A folder that is not there would end the run with the 3 of a wrong word instead of the 9009 that is asked for below.
if defined JAVA_HOME if not exist "%JAVA_HOME%\bin\java.exe" (echo cradlewright: JAVA_HOME names no Java: install Java 17 or later, or say in JAVA_HOME where it is>&2 & exit /b 4)
mkdir "%cache%" || (echo cradlewright: no room for temporary files in "%TEMP%">&2 & exit /b 4)
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "words="
:next
if [%1]==[] goto run
set "word=%~1"
rem Of a folder written with a backslash at its end that is doubled, for the same reason.
if "%word:~-1%"=="\" set "word=%word%\"
set words=%words% "=%word%"
shift /1
goto next
:run
for %%f in ("%here%\plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%f"
rem Answers are written in UTF-8; the console is told so and gets its own code page back.
set "page="
for /f "tokens=2 delims=:." %%p in ('chcp') do set "page=%%p"
chcp 65001 >nul
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=0.3 -Xshare:auto %CRADLEWRIGHT_JAVA_OPTIONS% -Dfile.encoding=UTF-8 -Dsun.stdout.encoding=UTF-8 -Djava.awt.headless=true ^
  -Dosgi.configuration.area="file:%cache%" -Dosgi.sharedConfiguration.area="file:%here%\configuration" -Dosgi.configuration.cascaded=true ^
  -Dosgi.instance.area=@none -Dosgi.user.area=@none -Dcradlewright.home="%here%" -Dcradlewright.marked=true ^
  -jar "%launcher%" -nosplash -application cradlewright.cli.app%words%
set "code=%ERRORLEVEL%"
if defined page chcp %page% >nul
rmdir /s /q "%cache%"
if "%code%"=="9009" (echo cradlewright: no Java was found: install Java 17 or later, or say in JAVA_HOME where it is>&2 & exit /b 4)
exit /b %code%
